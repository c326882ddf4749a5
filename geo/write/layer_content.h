// A layer of a vector file as plain values: what its columns are and what each row holds. Builders of layers make these;
// layer_file.h writes them. Nothing here knows the library behind.
//
// Shape:   one of nothing, a point, a line, lines, polygons; a row's shape fits the layer's kind or is nothing.
// Value:   nothing (null), whole number, number, text, time in UTC.
// Row::values has one value a column.
#pragma once

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

#include "core/survey/mound.h"
#include "geo/frame/geographic_shapes.h"

namespace plugside {

using Shape = std::variant<std::monostate, GeographicPoint, GeographicLine, std::vector<GeographicLine>,
                           std::vector<GeographicPolygon>>;
using Value = std::variant<std::monostate, std::int64_t, double, std::string, UtcTime>;

enum class ShapeKind { none, point, line, lines, polygons };
enum class ColumnKind { whole_number, number, text, time };

struct Column {
    const char* name;
    ColumnKind kind;
};

struct Row {
    Shape shape;
    std::vector<Value> values;
};

struct LayerContent {
    const char* name;
    ShapeKind kind;
    std::vector<Column> columns;
    std::vector<Row> rows;
};

// Null for an absent value.
template <typename T>
[[nodiscard]] Value value_or_null(const std::optional<T>& value) {
    return value ? Value(*value) : Value();
}
// The id shown for an index: index + 1.
[[nodiscard]] inline Value id_of(std::size_t index) { return static_cast<std::int64_t>(index + 1); }

}  // namespace plugside
