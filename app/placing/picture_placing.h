// Placing a picture that has no position, by pairs of a spot on the picture and the same place on the map.
//
// Half a pair: a spot or a place that waits for its other half; whichever comes first. With both the pair is there.
// Acts: each pair added, moved or removed, and the kind of placement, is one act of the field's history; the picture lies under the
//       ground as soon as its pairs place it, and is not drawn while they do not. While a pair is dragged, what would come of it is
//       told by `fit`, and nothing is kept before it is dropped.
// Kept: the pairs are the picture's (ImageryAnswers), so that they go into the project and are there when it is placed again.
#pragma once

#include <QObject>
#include <filesystem>
#include <optional>
#include <tl/expected.hpp>
#include <vector>

#include "app/session/field_session.h"
#include "app/session/imagery.h"

namespace plugside {

class PicturePlacing : public QObject {
    Q_OBJECT

public:
    PicturePlacing(FieldSession& session, Imagery& imagery, QObject* parent = nullptr);

    // A picture that waits for its place, or one that was placed by pairs.
    void begin(const std::filesystem::path& file);
    void leave();
    [[nodiscard]] bool active() const { return file_.has_value(); }
    [[nodiscard]] const std::optional<std::filesystem::path>& file() const { return file_; }

    [[nodiscard]] const std::vector<PlacementPair>& pairs() const { return dragged_ ? *dragged_ : pairs_; }
    [[nodiscard]] PlacementKind kind() const { return kind_; }
    // At least three pairs place a picture.
    [[nodiscard]] const tl::expected<PlacementFit, PlacementFault>& fit() const { return fit_; }
    [[nodiscard]] std::optional<PicturePixel> waiting_spot() const { return spot_; }
    [[nodiscard]] std::optional<LocalPoint> waiting_place() const { return place_; }
    [[nodiscard]] std::optional<std::size_t> picked() const { return picked_; }

    void take_spot(PicturePixel spot);
    void take_place(LocalPoint place);
    // Whether there was half a pair.
    bool put_half_away();
    void pick(std::optional<std::size_t> pair);
    void remove_picked();
    void use(PlacementKind kind);
    // What a hand holds: nothing is kept before `drop`.
    void drag_spot(std::size_t pair, PicturePixel spot);
    void drag_place(std::size_t pair, LocalPoint place);
    void drop();
    // By keys: steps of the same half that follow each other are one act.
    void shift_spot(std::size_t pair, PicturePixel to);
    void shift_place(std::size_t pair, LocalPoint to);

Q_SIGNALS:
    void changed();
    void begun();
    void left();

private:
    static constexpr std::size_t fewest_pairs = 3;
    void follow();
    void complete();
    void commit(std::vector<PlacementPair> pairs, PlacementKind kind, const QString& words, int step = 0);
    [[nodiscard]] static tl::expected<PlacementFit, PlacementFault> fitted(const std::vector<PlacementPair>& pairs,
                                                                           PlacementKind kind);

    FieldSession& session_;
    Imagery& imagery_;
    std::optional<std::filesystem::path> file_;
    std::vector<PlacementPair> pairs_;
    PlacementKind kind_ = PlacementKind::affine;
    std::optional<std::vector<PlacementPair>> dragged_;
    tl::expected<PlacementFit, PlacementFault> fit_ = tl::unexpected(PlacementFault{});
    std::optional<PicturePixel> spot_;
    std::optional<LocalPoint> place_;
    std::optional<std::size_t> picked_;
};

}  // namespace plugside
