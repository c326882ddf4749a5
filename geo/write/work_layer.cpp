#include "geo/write/work_layer.h"

#include "core/sets/work_order_rows.h"

namespace plugside {

LayerContent work_layer(const Survey& survey, PrivateRows rows) {
    LayerContent layer{"work_order", ShapeKind::none, {{"name", ColumnKind::text}, {"value", ColumnKind::text}}, {}};
    for (const WorkRow& row : rows_of(*survey.work))
        if (rows == PrivateRows::included || !is_private(row)) layer.rows.push_back({{}, {row.name, row.value}});
    return layer;
}

}  // namespace plugside
