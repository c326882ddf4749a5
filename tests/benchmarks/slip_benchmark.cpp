// The review of thirty sets at 300 and at 5,000 mounds: acts, the longest event of the window's thread, the longest step of a drag, and
// what one step of a moved ladder takes by itself. Beside them the time to copy the field, which every edit pays.
#include <chrono>
#include <cstdio>

#include "tests/app/window/set_review.h"

namespace {

using plugside::SetReview;

void print_review(std::size_t mounds, const char* how, void (*go)(SetReview&)) {
    SetReview review;
    review.open_simulated(mounds);
    go(review);
    std::printf(
        "%6zu mounds  %-6s  %3d acts for 30 sets  longest event %6.1f ms, of its own work %5.1f ms (%s)  longest step of a "
        "drag "
        "%5.1f ms, own %5.1f ms\n",
        mounds, how, review.acts(), review.worst_ms(), review.worst_work_ms(), review.worst_of().c_str(),
        review.worst_step_ms(), review.worst_step_work_ms());
}

template <typename Work>
double milliseconds_of(int times, const Work& work) {
    const auto begin = std::chrono::steady_clock::now();
    for (int k = 0; k < times; ++k) work(k);
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count() / times;
}

void print_steps(std::size_t mounds) {
    SetReview review;
    review.open_simulated(mounds);
    double worst = 0.0;
    double sum = 0.0;
    int ladders = 0;
    for (const plugside::SetPoint& set : review.plan().sets) {
        if (++ladders > 40) break;
        const plugside::ProbeSite& site = review.plan().probes[set.probe];
        const double begin_ms = milliseconds_of(1, [&](int) { (void)plugside::LadderByHand(site); });
        const plugside::LadderByHand by_hand(site);
        const double step_ms = milliseconds_of(10, [&](int k) {
            (void)by_hand.at({site.ladder.along + plugside::Metres::of(0.01 * k), site.ladder.across});
        });
        sum += step_ms;
        worst = std::max({worst, begin_ms, step_ms});
    }
    const auto field = review.window().session().field();
    const double copy_ms = milliseconds_of(10, [&](int) { const plugside::FieldSurvey copy = *field; });
    std::printf(
        "%6zu mounds  a step of a moved ladder %.2f ms, the slowest %.2f ms; a copy of the field %.2f ms; %zu sets\n",
        mounds, sum / std::min(ladders, 40), worst, copy_ms, review.plan().sets.size());
}

}  // namespace

int main() {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    plugside::application();
    for (const std::size_t mounds : {std::size_t{300}, std::size_t{5000}}) {
        print_review(mounds, "keys", plugside::review_thirty_by_keys);
        print_review(mounds, "mouse", plugside::review_thirty_by_mouse);
        print_steps(mounds);
    }
    return 0;
}
