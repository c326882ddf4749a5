// The window: day rail, map, slip, and the top bar over them; what is opened, handed out, undone and asked about.
#pragma once

#include <QIcon>
#include <QMenu>
#include <QSettings>
#include <QWidget>
#include <functional>
#include <map>
#include <memory>

#include "app/canvas/map_view.h"
#include "app/drawing/ground_tool.h"
#include "app/drawing/ladder_tool.h"
#include "app/drawing/place_tool.h"
#include "app/drawing/systems_tool.h"
#include "app/drawing/tape_tool.h"
#include "app/drawing/trace_tool.h"
#include "app/placing/picture_placing.h"
#include "app/placing/picture_view.h"
#include "app/placing/placing_panel.h"
#include "app/placing/placing_tool.h"
#include "app/reading/reading_sheet.h"
#include "app/session/choices.h"
#include "app/session/field_session.h"
#include "app/session/position_follower.h"
#include "app/session/project_keeper.h"
#include "app/session/sample_field.h"
#include "app/stages/day_rail.h"
#include "app/stages/slip.h"
#include "app/stages/tour_account.h"
#include "app/stages/work_account.h"
#include "app/window/dresser.h"
#include "app/window/hand_out_dialog.h"
#include "app/window/keys_overlay.h"
#include "app/window/map_buttons.h"
#include "app/window/top_bar.h"
#include "app/window/walk_through.h"

namespace plugside {

class PlaceRing;

class MainWindow : public QWidget {
    Q_OBJECT

public:
    // Asks a question with the given answers and returns the index of the one taken; the last answer always means "stay".
    using Ask = std::function<int(const QString& question, const QStringList& answers)>;

    explicit MainWindow(QWidget* parent = nullptr);
    ~MainWindow() override;

    // As the program starts: the files, or, the first time without any and where it is asked for, the sample with its walk-through.
    void begin(const FieldSession::Files& files, bool sample_wanted = false);
    // A project file is opened in place of the field at hand; walks and layers may also be added to that, which is asked.
    void open_files(const FieldSession::Files& files);
    void add_files(const FieldSession::Files& files);
    // Pictures of the ground, laid under the field that is open.
    void add_imagery(const FieldSession::Files& files);
    // The field at hand stays in its own project. Asks only where the last changes could not be kept there.
    void open_project(const std::filesystem::path& project);
    void keep_project_as();
    // The job in five steps on the sample field, of which nothing is kept; asks where another field is open.
    void show_on_sample();
    void leave_sample();
    [[nodiscard]] bool sample_is_open() const;
    // Whether the dialog is open now: nothing is handed out of a plan that is not up to date.
    bool open_hand_out();

    [[nodiscard]] FieldSession& session() { return session_; }
    [[nodiscard]] Choices& choices() { return choices_; }
    [[nodiscard]] Imagery& imagery() { return imagery_; }
    [[nodiscard]] ProjectKeeper& keeper() { return keeper_; }
    [[nodiscard]] Slip& slip() { return *slip_; }
    [[nodiscard]] MapView& map() { return *map_; }
    [[nodiscard]] GroundTool& drawing() { return *drawing_; }
    [[nodiscard]] TapeTool& tape() { return *tape_; }
    [[nodiscard]] TraceTool& tracing() { return *tracing_; }
    [[nodiscard]] SystemsTool& correcting() { return *correcting_; }
    [[nodiscard]] PicturePlacing& placing() { return placing_; }
    [[nodiscard]] PictureView& picture() { return *picture_; }
    [[nodiscard]] PlacingPanel& placing_panel() { return *placing_panel_; }
    [[nodiscard]] ReadingSheet& reading() { return *reading_; }
    [[nodiscard]] PositionFollower& positions() { return positions_; }
    [[nodiscard]] WalkThrough& walk_through() { return walk_through_; }
    [[nodiscard]] WorkAccount& work() { return work_; }
    [[nodiscard]] Dresser& dresser() { return dresser_; }
    [[nodiscard]] TourAccount& tours() { return tours_; }
    [[nodiscard]] HandOutDialog* hand_out_dialog() { return hand_out_dialog_; }
    void set_ask(Ask ask) { ask_ = std::move(ask); }

protected:
    void changeEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void closeEvent(QCloseEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void make_parts();
    void make_map();
    void make_slip();
    void bind_parts();
    void stop_hearing();
    void let_go_of_parts();
    void speak_in(Language language);
    enum class Pace { at_once, in_turns };
    void make_parts_anew(Pace pace);
    void lay_out();
    void bind_keys();
    void bind_letters();
    void bind_step_keys();
    void on_key_at(const QKeySequence& sequence, std::map<Step, std::function<void()>> acts);
    void bind_map_keys();
    void bind_file_keys();
    void on_key(const QKeySequence& sequence, std::function<void()> act);
    void draw_by_key(Stroke stroke);
    void correct_by_key(Saying saying);
    [[nodiscard]] bool findings_are_looked_at() const;
    void bind_session();
    void bind_reading();
    void hold_still(bool still);
    void hold_shortcuts(bool still, const QList<QKeySequence>& but);
    [[nodiscard]] MapTool* tool_of_the_step();
    void restore();
    void remember() const;
    void dress();
    void share_width();
    void name_window();
    void choose_files(bool to_add);
    void choose_imagery();
    void take_dropped(const FieldSession::Files& files);
    void bind_imagery();
    void enter_server();
    void bind_placing();
    void bind_tracing();
    void trace();
    void choose_layer_to_trace();
    void place_picture(const std::filesystem::path& file);
    void take_picture_away(const std::filesystem::path& file);
    void show_placing(bool on);
    void use_tape(bool on);
    void bind_projects();
    void bind_sample();
    void bind_positions();
    void choose_positions();
    [[nodiscard]] QWidget* place_of_lesson();
    void fill_project_menu(QMenu& menu);
    [[nodiscard]] bool may_leave_field(const QString& without);
    // Whether a project was among the files and was dealt with: opened, or a sentence where it came with other files.
    [[nodiscard]] bool took_project(const FieldSession::Files& files);
    void put_something_away();
    void bind_work();
    void bind_tours();
    [[nodiscard]] bool work_holds_back();
    void hand_out(FieldSession::HandOut where);
    void say_handed_out(const QStringList& files, const QString& remarks);
    void follow_picked_system();

    FieldSession session_;
    Choices choices_;
    Imagery imagery_;
    SampleField sample_;
    ProjectKeeper keeper_;
    PositionFollower positions_;
    WalkThrough walk_through_{session_, choices_};
    WorkAccount work_{session_, choices_};
    TourAccount tours_{session_};
    FieldSession::Files pictures_waiting_;  // for the field that is being read
    PicturePlacing placing_;
    Dresser& dresser_;
    BackgroundWork judging_drop_;
    Ask ask_;
    TopBar* top_bar_ = nullptr;
    DayRail* rail_ = nullptr;
    MapView* map_ = nullptr;
    MapButtons* map_buttons_ = nullptr;
    GroundTool* drawing_ = nullptr;
    TapeTool* tape_ = nullptr;
    SystemsTool* correcting_ = nullptr;
    LadderTool* laying_ = nullptr;
    TraceTool* tracing_ = nullptr;
    PlaceTool* setting_place_ = nullptr;
    PlacingTool* placing_tool_ = nullptr;
    PictureView* picture_ = nullptr;
    PlacingPanel* placing_panel_ = nullptr;
    Slip* slip_ = nullptr;
    KeysOverlay* keys_ = nullptr;
    ReadingSheet* reading_ = nullptr;
    PlaceRing* ring_ = nullptr;
    HandOutDialog* hand_out_dialog_ = nullptr;
    Language made_in_ = spoken();
    bool making_anew_ = false;  // the parts, in turns
    std::shared_ptr<const Plan> plan_picked_in_;  // what the picked system is a number of
};

// The program's own sign: a mound seen from above.
[[nodiscard]] QIcon program_icon();

}  // namespace plugside
