// The words of the reading sheet for what geo/read knows by value.
#pragma once

#include <QString>
#include <QStringList>
#include <vector>

#include "app/reading/file_look.h"

namespace plugside {

// The columns' meanings in the order they are offered. Of layers the places come from shapes, so that no column means one.
[[nodiscard]] std::vector<ColumnRole> offered_roles(bool of_a_layer);
[[nodiscard]] QString role_words(ColumnRole role);
[[nodiscard]] QString name_of(const FileLook& look);
// "table: 31 marks, 28 fans"
[[nodiscard]] QString taken_words(const FileLook& look);
// What stands in the way, short enough for a list; empty where nothing does.
[[nodiscard]] QString trouble_words(const FileLook& look);
// The refusal's sentence without the folders of the file's name.
[[nodiscard]] QString refusal_words(const Refusal& refusal);
[[nodiscard]] QString north_words(North north);

}  // namespace plugside
