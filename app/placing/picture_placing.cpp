#include "app/placing/picture_placing.h"

#include <utility>

#include "app/commands/picture_command.h"

namespace plugside {

PicturePlacing::PicturePlacing(FieldSession& session, Imagery& imagery, QObject* parent)
    : QObject(parent), session_(session), imagery_(imagery) {
    connect(&imagery_, &Imagery::changed, this, &PicturePlacing::follow);
    connect(&session_, &FieldSession::field_replaced, this, &PicturePlacing::follow);
}

tl::expected<PlacementFit, PlacementFault> PicturePlacing::fitted(const std::vector<PlacementPair>& pairs,
                                                                  PlacementKind kind) {
    if (pairs.size() < fewest_pairs)
        return tl::unexpected(PlacementFault{PlacementFault::Code::too_few, pairs.size(), fewest_pairs});
    return fit_placement(pairs, kind);
}

void PicturePlacing::begin(const std::filesystem::path& file) {
    if (!imagery_.state_of(file)) return;
    file_ = file;
    spot_.reset();
    place_.reset();
    picked_.reset();
    dragged_.reset();
    follow();
    Q_EMIT begun();
}

void PicturePlacing::leave() {
    if (!file_) return;
    file_.reset();
    pairs_.clear();
    dragged_.reset();
    spot_.reset();
    place_.reset();
    picked_.reset();
    Q_EMIT left();
}

// As the picture is known now, which undo may have changed; one that went takes its placing along.
void PicturePlacing::follow() {
    if (!file_) return;
    const auto state = imagery_.state_of(*file_);
    if (!state || !session_.field()) return leave();
    pairs_ = state->answers.pairs;
    kind_ = state->answers.pair_kind;
    fit_ = fitted(pairs(), kind_);
    if (picked_ && *picked_ >= pairs_.size()) picked_.reset();
    Q_EMIT changed();
}

void PicturePlacing::commit(std::vector<PlacementPair> pairs, PlacementKind kind, const QString& words, int step) {
    const auto before = file_ ? imagery_.state_of(*file_) : std::nullopt;
    if (!before || (before->answers.pairs == pairs && before->answers.pair_kind == kind)) return;
    ProjectPicture after = *before;
    const auto fit = fitted(pairs, kind);
    after.answers.placement = fit ? std::optional(fit->placement) : std::nullopt;
    after.answers.pairs = std::move(pairs);
    after.answers.pair_kind = kind;
    session_.push(new PictureCommand(
        *file_, *before, std::move(after), words,
        [&imagery = imagery_](const std::filesystem::path& file, const PictureCommand::State& to) { imagery.put(file, to); },
        step));
}

void PicturePlacing::take_spot(PicturePixel spot) {
    spot_ = spot;
    complete();
}

void PicturePlacing::take_place(LocalPoint place) {
    place_ = place;
    complete();
}

void PicturePlacing::complete() {
    if (!file_) return;
    if (!spot_ || !place_) {
        Q_EMIT changed();
        return;
    }
    std::vector<PlacementPair> pairs = pairs_;
    pairs.push_back({*std::exchange(spot_, std::nullopt), *std::exchange(place_, std::nullopt)});
    const std::size_t last = pairs.size() - 1;
    commit(std::move(pairs), kind_, tr("add a pair"));
    pick(last);
}

bool PicturePlacing::put_half_away() {
    const bool there = spot_ || place_;
    spot_.reset();
    place_.reset();
    if (there) Q_EMIT changed();
    return there;
}

void PicturePlacing::pick(std::optional<std::size_t> pair) {
    picked_ = pair && *pair < pairs_.size() ? pair : std::nullopt;
    Q_EMIT changed();
}

void PicturePlacing::remove_picked() {
    if (!picked_) return;
    std::vector<PlacementPair> pairs = pairs_;
    pairs.erase(pairs.begin() + static_cast<std::ptrdiff_t>(*picked_));
    commit(std::move(pairs), kind_, tr("remove a pair"));
}

void PicturePlacing::use(PlacementKind kind) { commit(pairs_, kind, tr("way of placing")); }

void PicturePlacing::drag_spot(std::size_t pair, PicturePixel spot) {
    if (pair >= pairs_.size()) return;
    if (!dragged_) dragged_ = pairs_;
    (*dragged_)[pair].pixel = spot;
    fit_ = fitted(*dragged_, kind_);
    Q_EMIT changed();
}

void PicturePlacing::drag_place(std::size_t pair, LocalPoint place) {
    if (pair >= pairs_.size()) return;
    if (!dragged_) dragged_ = pairs_;
    (*dragged_)[pair].ground = place;
    fit_ = fitted(*dragged_, kind_);
    Q_EMIT changed();
}

void PicturePlacing::drop() {
    if (!dragged_) return;
    commit(*std::exchange(dragged_, std::nullopt), kind_, tr("move a pair"));
    follow();
}

void PicturePlacing::shift_spot(std::size_t pair, PicturePixel to) {
    if (pair >= pairs_.size()) return;
    std::vector<PlacementPair> pairs = pairs_;
    pairs[pair].pixel = to;
    commit(std::move(pairs), kind_, tr("move a pair"), static_cast<int>(2 * pair + 1));
}

void PicturePlacing::shift_place(std::size_t pair, LocalPoint to) {
    if (pair >= pairs_.size()) return;
    std::vector<PlacementPair> pairs = pairs_;
    pairs[pair].ground = to;
    commit(std::move(pairs), kind_, tr("move a pair"), static_cast<int>(2 * pair + 2));
}

}  // namespace plugside
