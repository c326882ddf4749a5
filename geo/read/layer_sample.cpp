#include "geo/read/layer_sample.h"

#include <ogrsf_frmts.h>

#include <memory>
#include <optional>

#include "core/words/words.h"
#include "geo/frame/vector_library.h"
#include "geo/read/layer_source.h"

namespace plugside {

namespace {

struct Kinds {
    bool points = false;
    bool lines = false;
    bool polygons = false;
    std::optional<std::array<double, 2>> first;
};

void look_at(const OGRGeometry& geometry, Kinds& kinds) {
    if (geometry.IsEmpty()) return;
    const OGRwkbGeometryType kind = wkbFlatten(geometry.getGeometryType());
    if (OGR_GT_IsSubClassOf(kind, wkbGeometryCollection)) {
        for (const OGRGeometry* part : *geometry.toGeometryCollection()) look_at(*part, kinds);
        return;
    }
    kinds.points = kinds.points || kind == wkbPoint;
    kinds.lines = kinds.lines || OGR_GT_IsCurve(kind);
    kinds.polygons = kinds.polygons || OGR_GT_IsSurface(kind);
    if (kinds.first) return;
    OGREnvelope box;
    geometry.getEnvelope(&box);
    kinds.first = {(box.MinX + box.MaxX) / 2.0, (box.MinY + box.MaxY) / 2.0};
}

std::string text_of(const OGRFeature& feature, int column) {
    if (!feature.IsFieldSetAndNotNull(column)) return {};
    if (feature.GetFieldDefnRef(column)->GetType() != OFTReal) return feature.GetFieldAsString(column);
    std::string text = std::to_string(feature.GetFieldAsDouble(column));
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text;
}

LayerSample sample_of(OGRLayer& source, std::size_t rows, const Progress& progress) {
    LayerSample sample;
    sample.layer = source.GetName();
    const OGRFeatureDefn& definition = *source.GetLayerDefn();
    for (int i = 0; i < definition.GetFieldCount(); ++i)
        sample.columns.emplace_back(definition.GetFieldDefn(i)->GetNameRef());
    source.ResetReading();
    while (const std::unique_ptr<OGRFeature> feature{source.GetNextFeature()}) {
        if (progress.stopped()) break;
        Kinds kinds;
        if (const OGRGeometry* geometry = feature->GetGeometryRef()) look_at(*geometry, kinds);
        sample.points += kinds.points ? 1U : 0U;
        sample.lines += kinds.lines ? 1U : 0U;
        sample.polygons += kinds.polygons ? 1U : 0U;
        if (kinds.first && sample.places.size() < rows) sample.places.push_back(*kinds.first);
        if (sample.rows.size() == rows) continue;
        auto& row = sample.rows.emplace_back();
        for (int i = 0; i < definition.GetFieldCount(); ++i) row.push_back(text_of(*feature, i));
    }
    return sample;
}

}  // namespace

tl::expected<std::vector<LayerSample>, Refusal> sample_layers(const std::filesystem::path& file, std::size_t rows,
                                                              const Progress& progress) {
    const auto kind = kind_of_file(file);
    if (!kind) return tl::unexpected(kind.error());
    if (auto refusal = refusal_before_opening(file, *kind)) return tl::unexpected(*refusal);
    prepare_vector_library();
    const LibraryMessages messages;
    const LayerSource data = open_layers(file, *kind);
    if (!data)
        return tl::unexpected(
            Refusal{Refusal::Code::malformed, file.string(), "",
                    Words::tell("something that cannot be read ({1})", {quoted_for_display(messages.failure(), 160)}),
                    expected_of_layers(*kind)});
    std::vector<LayerSample> samples;
    for (int i = 0; i < data->GetLayerCount(); ++i)
        if (OGRLayer& layer = *data->GetLayer(i); layer.GetGeomType() != wkbNone)
            samples.push_back(sample_of(layer, rows, progress));
    return samples;
}

}  // namespace plugside
