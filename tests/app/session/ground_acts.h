// Every act on the ground that core/survey/ground_edits.h has, at random, by its name there. One that cannot be done (a line that
// crosses nothing) does nothing, as in the window.
#pragma once

#include <cmath>
#include <numbers>
#include <optional>
#include <string>
#include <vector>

#include "app/session/field_session.h"
#include "core/survey/ground_edits.h"
#include "tests/app/session/keyed_choice.h"

namespace plugside::testing_support {

class GroundActs {
public:
    GroundActs(FieldSession& session, KeyedChoice& random) : session_(session), random_(random) {}

    // Of the names that ground_edits.h gives them.
    static const std::vector<std::string>& names() {
        static const std::vector<std::string> all{"with_shape",     "without_shape", "corner_moved", "corner_added",
                                                  "corner_removed", "shape_shifted", "split_along",  "joined",
                                                  "with_hole",      "with_band",     "with_words",   "mended"};
        return all;
    }

    void act(const std::string& name) {
        if (name == "with_shape") take(with_shape(ground(), random_.word(GroundKind::untreated), outline()));
        if (name == "with_band") take(with_band(ground(), an_area_kind(), stroke(), Metres::of(random_.between(0.5, 3.0))));
        const auto shape = any_shape(name == "with_hole" || name == "mended");
        if (!shape) return;
        if (name == "without_shape") take(without_shape(ground(), *shape));
        if (name == "corner_moved") take(corner_moved(ground(), any_corner(*shape), place()));
        if (name == "corner_added") take(corner_added(ground(), any_corner(*shape), place()));
        if (name == "corner_removed") take(corner_removed(ground(), any_corner(*shape)));
        if (name == "shape_shifted") take(shape_shifted(ground(), *shape, step()));
        if (name == "split_along") take(split_along(ground(), *shape, line_across(*shape)));
        if (name == "joined") join_with_another(*shape);
        if (name == "with_hole") take(with_hole(ground(), *shape, piece_about(middle_of(*shape), 0.4)));
        if (name == "with_words") take(with_words(ground(), *shape, words()));
        if (name == "mended") mend_what_is_crossed(*shape);
    }

private:
    const Ground& ground() const { return session_.field()->survey.ground; }

    void take(const EditedGround& edited) {
        if (edited) session_.edit(SurveyPart(*edited), QStringLiteral("ground"));
    }

    LocalPoint place() {
        const auto& mounds = session_.field()->survey.mounds;
        const LocalPoint near = mounds.empty() ? LocalPoint{} : mounds[random_.below(mounds.size())].plug;
        return near + LocalVector{random_.between(-12.0, 12.0), random_.between(-12.0, 12.0)};
    }
    LocalVector step() { return {random_.between(-3.0, 3.0), random_.between(-3.0, 3.0)}; }

    std::vector<LocalPoint> piece_about(LocalPoint middle, double reach) {
        std::vector<LocalPoint> corners;
        const std::size_t count = 3 + random_.below(4);
        for (std::size_t i = 0; i < count; ++i) {
            const double angle = 2.0 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(count);
            corners.push_back(middle + LocalVector{std::cos(angle), std::sin(angle)} * (reach * random_.between(0.6, 1.0)));
        }
        return corners;
    }
    std::vector<LocalPoint> outline() { return piece_about(place(), random_.between(2.0, 40.0)); }
    std::vector<LocalPoint> stroke() { return {place(), place(), place()}; }
    GroundKind an_area_kind() {
        return random_.one_of(std::vector{GroundKind::boundary, GroundKind::keep_clear, GroundKind::untreated});
    }

    std::optional<GroundShape> any_shape(bool area) {
        std::vector<GroundShape> shapes = shapes_of(ground());
        if (area) std::erase_if(shapes, [](GroundShape shape) { return !is_area(shape.kind); });
        return shapes.empty() ? std::nullopt : std::optional(random_.one_of(shapes));
    }
    GroundCorner any_corner(GroundShape shape) {
        GroundCorner corner{shape, random_.below(std::max<std::size_t>(rings_of(ground(), shape), 1)), 0};
        corner.corner = random_.below(corners_of(ground(), shape, corner.ring).size());
        return corner;
    }
    LocalPoint middle_of(GroundShape shape) const {
        const auto corners = corners_of(ground(), shape);
        LocalVector sum{};
        for (const LocalPoint corner : corners) sum = sum + (corner - LocalPoint{});
        return LocalPoint{} + sum * (1.0 / static_cast<double>(corners.size()));
    }
    std::vector<LocalPoint> line_across(GroundShape shape) {
        const LocalPoint middle = middle_of(shape);
        const double angle = random_.between(0.0, std::numbers::pi);
        const LocalVector far = LocalVector{std::cos(angle), std::sin(angle)} * 1000.0;
        return {middle + far * -1.0, middle + far};
    }

    void join_with_another(GroundShape shape) {
        std::vector<LocalPoint> drawn = corners_of(ground(), shape);
        if (shape.kind == GroundKind::barrier)
            drawn = {drawn.back(), drawn.back() + step()};
        else
            for (LocalPoint& corner : drawn) corner = corner + LocalVector{0.7, 0.4};
        take(with_shape(ground(), shape.kind, drawn));
        const auto shapes = shapes_of(ground());
        for (auto other = shapes.rbegin(); other != shapes.rend(); ++other)
            if (other->kind == shape.kind) {
                take(joined(ground(), shape, *other));
                return;
            }
    }

    void mend_what_is_crossed(GroundShape shape) {
        const GroundCorner corner = any_corner(shape);
        const LocalPoint at = corners_of(ground(), shape, corner.ring)[corner.corner];
        const LocalPoint middle = middle_of(shape);
        take(corner_moved(ground(), corner, middle + (middle - at) * 1.7));
        take(mended(ground(), shape));
    }

    ShapeWords words() {
        static const std::vector<std::string> names{"", "ditch", "caf\xc3\xa9", "well by the \"oak\""};
        ShapeWords words;
        words.name = random_.one_of(names);
        words.reason = random_.one_of(names);
        words.kind = random_.word(KeepClearKind::other);
        words.width = Metres::of(random_.between(0.3, 6.0));
        return words;
    }

    FieldSession& session_;
    KeyedChoice& random_;
};

}  // namespace plugside::testing_support
