#include <algorithm>
#include <cassert>
#include <charconv>
#include <map>
#include <string>

#include "core/systems/link_net.h"

namespace plugside {

namespace {

// One table of the resource: "name rows columns unit" and rows x columns whole numbers, each times the unit.
struct Table {
    std::size_t rows = 0;
    std::size_t columns = 0;
    std::vector<float> values;
};

std::string_view next_word(std::string_view& text) {
    const auto blank = [](char c) { return c == ' ' || c == '\n'; };
    text.remove_prefix(static_cast<std::size_t>(std::find_if_not(text.begin(), text.end(), blank) - text.begin()));
    const std::string_view word(text.data(), static_cast<std::size_t>(std::find_if(text.begin(), text.end(), blank) - text.begin()));
    text.remove_prefix(word.size());
    return word;
}

template <typename Number>
Number number_in(std::string_view word) {
    Number value{};
    [[maybe_unused]] const auto parsed = std::from_chars(word.data(), word.data() + word.size(), value);
    assert(parsed.ec == std::errc() && parsed.ptr == word.data() + word.size());
    return value;
}

std::map<std::string, Table, std::less<>> tables_in(std::string_view text) {
    std::map<std::string, Table, std::less<>> tables;
    while (text.starts_with('#')) text.remove_prefix(std::min(text.size(), text.find('\n') + 1));
    for (std::string_view name = next_word(text); !name.empty(); name = next_word(text)) {
        Table& table = tables[std::string(name)];
        table.rows = number_in<std::size_t>(next_word(text));
        table.columns = number_in<std::size_t>(next_word(text));
        const auto unit = number_in<double>(next_word(text));
        table.values.resize(table.rows * table.columns);
        for (float& value : table.values) value = static_cast<float>(number_in<int>(next_word(text)) * unit);
    }
    return tables;
}

class NetReader {
public:
    explicit NetReader(std::string_view text) : tables_(tables_in(text)) {}

    [[nodiscard]] const Table& table(const std::string& name) const {
        const auto found = tables_.find(name);
        assert(found != tables_.end());
        return found->second;
    }
    [[nodiscard]] bool has(const std::string& name) const { return tables_.contains(name); }
    // With its bias unless it has none.
    [[nodiscard]] DenseLayer layer(const std::string& name) const {
        const Table& weight = table(name);
        DenseLayer layer{weight.rows, weight.columns, weight.values, {}};
        if (has(name + ".bias")) layer.bias = table(name + ".bias").values;
        assert(layer.bias.empty() || layer.bias.size() == layer.outputs);
        return layer;
    }

private:
    std::map<std::string, Table, std::less<>> tables_;
};

LinkNetRound round_of(const NetReader& reader, const std::string& prefix) {
    return {.gates = reader.layer(prefix + "gates"),
            .values = reader.layer(prefix + "values"),
            .surroundings = reader.layer(prefix + "surroundings"),
            .mark = reader.layer(prefix + "mark"),
            .triangle_gates = reader.layer(prefix + "triangle_gates"),
            .triangle_values = reader.layer(prefix + "triangle_values"),
            .crossing = reader.layer(prefix + "crossing"),
            .own = reader.layer(prefix + "own"),
            .end_one = reader.layer(prefix + "end_one"),
            .end_other = reader.layer(prefix + "end_other"),
            .around = reader.layer(prefix + "around"),
            .out = reader.layer(prefix + "out")};
}

}  // namespace

LinkNetWeights parse_link_net(std::string_view text) {
    const NetReader reader(text);
    LinkNetWeights net;
    net.link_mean = reader.table("link_mean").values;
    net.link_sd = reader.table("link_sd").values;
    net.mark_mean = reader.table("mark_mean").values;
    net.mark_sd = reader.table("mark_sd").values;
    net.link_in = reader.layer("link_in");
    net.mark_in = reader.layer("mark_in");
    for (int round = 1; reader.has("round" + std::to_string(round) + ".gates"); ++round)
        net.rounds.push_back(round_of(reader, "round" + std::to_string(round) + "."));
    net.hidden = reader.layer("hidden");
    net.score = reader.layer("score");
    net.root = reader.layer("root");
    assert(net.link_in.inputs == net_link_inputs && net.mark_in.inputs == net_mark_inputs && !net.rounds.empty());
    return net;
}

}  // namespace plugside
