// Another tongue for the texts that one thread tells, while the rest of the program speaks its own: paper for a crew that reads Spanish, from
// a window in English.
//
// Scope:   from its making to its end, on the thread that made it; ones inside each other end in turn. `tongue` outlives it; null is English.
// Cost:    none worth naming.
#pragma once

#include "core/words/words.h"

namespace plugside {

class TongueHere {
public:
    explicit TongueHere(const Tongue* tongue);
    ~TongueHere();
    TongueHere(const TongueHere&) = delete;
    TongueHere& operator=(const TongueHere&) = delete;

private:
    bool others_;
    const Tongue* before_;
};

}  // namespace plugside
