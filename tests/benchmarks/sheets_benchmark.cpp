// Two hundred sets on paper and for a phone, beside a yardstick of the same run: the window's own close-ups of the same sets, drawn on a picture.
#include <QDir>
#include <QGuiApplication>
#include <QImage>
#include <QPainter>
#include <QTemporaryDir>
#include <chrono>
#include <cstdio>
#include <filesystem>

#include "app/sheets/sheet_files.h"
#include "app/stages/close_up_drawing.h"
#include "core/plan/make_plan.h"
#include "core/simulation/burrow_simulator.h"

namespace {

using namespace plugside;

template <typename Work>
double seconds_of(const Work& work) {
    const auto begin = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

FieldSurvey made_up_field() {
    SimulationOptions options;
    options.mounds_wanted = 2600;
    options.seed = 7;
    options.with_ground = true;
    FieldSurvey field;
    field.field_name = "Made-up field";
    field.frame = LocalFrame::centred_on({-104.9, 41.0});
    field.survey = simulate_field(options).survey;
    return field;
}

double draw_on_a_picture(const FieldSurvey& field, const Plan& plan, std::size_t sets) {
    QImage picture(340, 260, QImage::Format_RGB32);
    return seconds_of([&] {
        for (std::size_t i = 0; i < sets; ++i) {
            picture.fill(Qt::white);
            QPainter painter(&picture);
            const CloseUpScene scene = close_up_scene(field, plan, plan.probes[plan.sets[i].probe]);
            CloseUpDrawing(scene, scene.planned, picture.size(), style_of(Theme::light), {}).draw(painter);
        }
    });
}

}  // namespace

int main(int count, char** words) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application(count, words);
    const FieldSurvey field = made_up_field();
    const auto plan = make_plan(field.survey);
    if (!plan) return 1;
    const QTemporaryDir folder;
    constexpr std::size_t cards = 200;
    SheetInput input{field, *plan, LengthUnits::feet_and_inches, Language::english, Paper::letter, {}, {}};
    input.made_at = std::chrono::sys_days(std::chrono::year{2026} / 10 / 1);
    for (int number = 1; number <= static_cast<int>(cards); ++number) input.pages.sets.push_back(number);
    const std::filesystem::path pdf = folder.filePath("sheets.pdf").toStdString();
    const std::filesystem::path page = folder.filePath("phone.html").toStdString();
    bool written = true;
    const double on_paper = seconds_of([&] { written = write_sheets(input, pdf).has_value() && written; });
    const double for_a_phone = seconds_of([&] { written = write_phone_page(input, page).has_value() && written; });
    if (!written || plan->sets.size() < cards) return 1;
    std::printf(
        "%zu cards of %zu marks: PDF %.2f s, %.2f MB; page for a phone %.2f s, %.2f MB; yardstick, close-ups on a picture: "
        "%.2f s\n",
        cards, field.survey.mounds.size(), on_paper, static_cast<double>(std::filesystem::file_size(pdf)) * 1e-6,
        for_a_phone, static_cast<double>(std::filesystem::file_size(page)) * 1e-6, draw_on_a_picture(field, *plan, cards));
    return 0;
}
