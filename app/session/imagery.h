// The imagery that is open beside a field: which pictures, in which order, how strongly shown, and their tiles.
//
// Order:  by the day that they were taken, the latest on top; pictures without a day below those with one, in the order in
//         which they were added.
// Tone:   0..1, how strongly imagery is drawn in the light theme; under sunlight a fifth at the tone that holds at first.
// scene:  what is there to draw of a view now, coarser tiles standing in for those still being made; asks for what is
//         missing. `tiles_arrived` follows when a better one is to be had. The same object until something changes.
// Copies: a large picture without reduced copies is copied in the background to `copies` (a folder of the program's), while
//         it is shown roughly.
// Without a position: a picture that neither its file nor anyone has placed is not drawn; it waits among `unplaced` until `put`
//         says where it lies. `wants_place` tells of one that was added just now.
// put:    a picture as it is to be from now on, in place of what it was; one that is open is placed anew at once, any other is
//         opened first.
// Server: tiles of a map server, under all pictures; only after `ask_server`, which a person's yes alone calls, and never named by a
//         project. A field that is replaced ends it.
// Memory: tiles of at most `most_tile_bytes`.
// Errors: `refused`, with the refusal, so that what asks for an answer can be asked; a field that is replaced closes all.
#pragma once

#include <QObject>
#include <QTimer>
#include <filesystem>
#include <list>
#include <memory>
#include <optional>
#include <vector>

#include "app/canvas/imagery_scene.h"
#include "app/canvas/palette.h"
#include "app/canvas/view_transform.h"
#include "app/planning/background_work.h"
#include "app/session/tile_workers.h"
#include "geo/imagery/tile_address.h"
#include "geo/store/project.h"

namespace plugside {

class ServerImagery;

struct OpenImagery {
    std::uint64_t number = 0;
    ImagerySource source;
    ImageryAnswers answers;  // that it was opened by
    bool visible = true;
    bool wants_copy = false;  // reduced copies, which it has not
    GroundBox box;
};

class Imagery : public QObject {
    Q_OBJECT

public:
    static constexpr double first_tone = 0.55;

    static constexpr std::size_t usual_tile_bytes = std::size_t{160} * 1024 * 1024;

    explicit Imagery(std::filesystem::path copies, QObject* parent = nullptr,
                     std::size_t most_tile_bytes = usual_tile_bytes);
    ~Imagery() override;

    // Closes what is open, unless it lies on that very plane already.
    void lie_on(const LocalFrame& frame);
    void add(const std::filesystem::path& file, const ImageryAnswers& answers = {});
    // Nothing: it is taken away.
    void put(const std::filesystem::path& file, const std::optional<ProjectPicture>& picture);
    void take_away(std::uint64_t number);
    void ask_server(const TileAddress& address, int deepest);
    void leave_server();
    void show_server(bool visible);
    [[nodiscard]] ServerImagery* server() { return server_.get(); }  // null: none is asked
    [[nodiscard]] bool server_is_shown() const { return server_shown_; }
    void show(std::uint64_t number, bool visible);
    void set_tone(double tone);
    // As a project names them, in place of all that are open. What cannot be opened (a disk that is not there) is refused and stays
    // named, to be there again when the project is opened next time.
    void restore(const std::vector<ProjectPicture>& pictures, double tone);
    // All that are open, on their way, or named and not to be opened: the lowest first.
    [[nodiscard]] std::vector<ProjectPicture> named() const;

    [[nodiscard]] const std::vector<OpenImagery>& pictures() const { return pictures_; }  // the lowest first
    [[nodiscard]] const std::vector<ProjectPicture>& unplaced() const { return unplaced_; }
    // As it would be named; nothing for a file that is not among them.
    [[nodiscard]] std::optional<ProjectPicture> state_of(const std::filesystem::path& file) const;
    [[nodiscard]] double tone() const { return tone_; }
    [[nodiscard]] const std::filesystem::path& copies() const { return copies_; }
    [[nodiscard]] bool opening() const { return !waiting_.empty() || opening_.running(); }
    [[nodiscard]] bool copying() const { return copying_.running(); }
    [[nodiscard]] double share_copied() const { return copying_.share_done(); }

    // Null where there is nothing to draw.
    [[nodiscard]] std::shared_ptr<const ImageryScene> scene(const ViewTransform& view, double device_pixel_ratio,
                                                            Theme theme);
    // Whether all tiles of the last scene are made as well as they can be.
    [[nodiscard]] bool settled() const { return last_wishes_.empty(); }

Q_SIGNALS:
    void changed();  // pictures, their order, visibility, tone, copies
    void tiles_arrived();
    void refused(const std::filesystem::path& file, const plugside::Refusal& refusal);
    void wants_place(const std::filesystem::path& file);
    void server_failed(const QString& sentence);

private:
    struct Waiting {
        std::filesystem::path file;
        ImageryAnswers answers;
        bool visible = true;
        bool named_before = false;  // by a project
    };
    struct Asked {
        ViewTransform view;
        double device_pixel_ratio = 1.0;
        Theme theme = Theme::light;
        std::uint64_t state = 0;
        friend bool operator==(const Asked&, const Asked&) = default;
    };
    void open_next();
    void keep_for_later(const Waiting& picture, const Refusal& why);
    [[nodiscard]] bool place_anew(const ProjectPicture& picture);
    // From all lists, and from what is being opened.
    void drop(const std::filesystem::path& file);
    void take(ImagerySource source, const Waiting& asked_for, bool wants_copy);
    void close_all();
    void copy_next();
    void use_copy(const std::filesystem::path& file, const std::optional<std::filesystem::path>& copied);
    // What has tiles: a picture or a server.
    struct Tiled {
        std::uint64_t number = 0;
        int finest = 0;
        GroundBox box;
        bool has_copy = false;
    };
    void add_pieces(const Tiled& tiled, const Asked& asked, ImageryScene& scene, std::vector<TileWish>& wishes);
    [[nodiscard]] std::vector<TileWish> answered(std::vector<TileWish> wishes);
    void add_server(const Asked& asked, ImageryScene& scene, std::vector<TileWish>& wishes);

    std::filesystem::path copies_;
    LocalFrame frame_;
    std::vector<OpenImagery> pictures_;
    double tone_ = first_tone;
    std::uint64_t numbers_ = 0;
    std::uint64_t state_ = 0;
    std::list<Waiting> waiting_;
    std::optional<Waiting> at_hand_;         // being opened
    std::vector<ProjectPicture> not_there_;  // named by a project and not to be opened
    std::vector<ProjectPicture> unplaced_;   // without a position
    std::unique_ptr<ServerImagery> server_;
    std::uint64_t server_number_ = 0;
    bool server_shown_ = true;
    BackgroundWork opening_;
    BackgroundWork copying_;
    std::optional<Asked> asked_;
    std::shared_ptr<const ImageryScene> scene_;
    std::vector<TileWish> last_wishes_;
    QTimer arrivals_;
    TileStore store_;
    TileWorkers workers_;  // last: they stop before what they use goes
};

}  // namespace plugside
