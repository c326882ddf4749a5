#include "core/mending/digger_key.h"

#include <array>

#include "core/words/words.h"

namespace plugside {

namespace {

using Picture = DiggerPicture;

constexpr std::string_view uc_ipm = Words::later("UC IPM Pest Notes 7433");
constexpr std::string_view dalquest = Words::later("Dalquest 1948");
constexpr std::string_view montana = Words::later("Montana Dept of Agriculture");
constexpr std::string_view slides = Words::later("extension slides");
constexpr std::string_view plug_source = Words::later("Driscoll & Watson");
constexpr std::string_view practice = Words::later("common practice");

enum Question : std::size_t { soil_heap, hole_without_heap, shape_of_heap, round_heap, fan_hole, crushed_heap };

constexpr std::array<DiggerAnswer, 3> soil_heap_answers{{
    {Words::later("Yes, a heap of loose soil"), Picture::mound, shape_of_heap, std::nullopt,
     Words::later("Gophers and moles throw up soil."), uc_ipm},
    {Words::later("No heap, or hardly any: a hole"), Picture::no_mound, hole_without_heap, std::nullopt,
     Words::later("A hole without a heap is not a gopher's mound."), uc_ipm},
    {Words::later("No hole and no heap: a raised ridge in the turf"), Picture::ridge, std::nullopt, SignKind::mole,
     Words::later("A mole lifts the ground along its shallow way."), dalquest},
}};

constexpr std::array<DiggerAnswer, 3> hole_answers{{
    {Words::later("Several open holes joined by narrow worn trails in the grass"), Picture::worn_trail, std::nullopt,
     SignKind::vole, Words::later("Voles keep open holes and runways on the surface."), slides},
    {Words::later("An open hole, a hand wide, no trails"), Picture::no_mound, std::nullopt, SignKind::ground_squirrel,
     Words::later("A ground squirrel's holes stay open."), montana},
    {Words::later("A small round patch of fresh soil, closed"), Picture::small_round_plug, std::nullopt,
     SignKind::surface_plug, Words::later("A gopher closes a small opening with a round plug and leaves no fan."),
     plug_source},
}};

constexpr std::array<DiggerAnswer, 3> shape_answers{{
    {Words::later("Like a fan, a crescent or a kidney: soil thrown to one side"), Picture::fan_to_one_side, fan_hole,
     std::nullopt, Words::later("A gopher pushes soil out to one side."), uc_ipm},
    {Words::later("Round, the same on all sides"), Picture::round_hill, round_heap, std::nullopt,
     Words::later("A mole's hill is round, like a volcano."), dalquest},
    {Words::later("Crushed, mown or washed out: no shape is left"), Picture::flattened, crushed_heap, std::nullopt,
     Words::later("A crushed mound has lost its fan."), practice},
}};

constexpr std::array<DiggerAnswer, 3> round_answers{{
    {Words::later("Others like it stand about a stride apart, in a line or along a ridge"), Picture::string_of_hills,
     std::nullopt, SignKind::mole, Words::later("A mole's hills stand about a stride apart along a raised ridge."),
     dalquest},
    {Words::later("The hole, open or filled, is in the very middle"), Picture::hole_in_middle, std::nullopt, SignKind::mole,
     Words::later("A mole's hill is pushed up from its middle."), dalquest},
    {Words::later("Small, about a hand across, flat, closed, on its own"), Picture::small_round_plug, std::nullopt,
     SignKind::surface_plug, Words::later("A gopher's surface plug is round, some 15 cm across, without a fan."),
     plug_source},
}};

constexpr std::array<DiggerAnswer, 3> fan_hole_answers{{
    {Words::later("Closed with soil, at the narrow side"), Picture::closed_plug, std::nullopt, SignKind::gopher_mound,
     Words::later("A gopher closes its hole; the plug is opposite the pile."), uc_ipm},
    {Words::later("Open, with a worn or bare entrance"), Picture::bare_entrance, std::nullopt, SignKind::ground_squirrel,
     Words::later("Ground squirrels throw soil before a hole that stays open."), montana},
    {Words::later("Open, but the soil is fresh and damp"), Picture::open_hole, std::nullopt, std::nullopt,
     Words::later("A gopher at work has not closed it yet: come back in an hour, a gopher's hole is closed by then."),
     practice},
}};

constexpr std::array<DiggerAnswer, 2> crushed_answers{{
    {Words::later("Other mounds near it have a fan and a closed plug"), Picture::fan_to_one_side, std::nullopt,
     SignKind::gopher_mound, Words::later("Its neighbours are a gopher's; it counts without a fan."), practice},
    {Words::later("Nothing near it tells"), Picture::flattened, std::nullopt, std::nullopt,
     Words::later("It cannot be told: level it and look again in two days."), practice},
}};

constexpr std::array<DiggerQuestion, 6> questions{{
    {Words::later("Is there a heap of soil?"), soil_heap_answers},
    {Words::later("What is at the hole?"), hole_answers},
    {Words::later("What shape is the heap?"), shape_answers},
    {Words::later("What else is to be seen at the round heap?"), round_answers},
    {Words::later("How is the hole of the fan?"), fan_hole_answers},
    {Words::later("What stands near the crushed heap?"), crushed_answers},
}};

}  // namespace

std::span<const DiggerQuestion> digger_key() { return questions; }

}  // namespace plugside
