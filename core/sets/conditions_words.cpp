// What the questions and answers of conditions.h are called in files and said to a person.
#include <algorithm>
#include <array>

#include "core/sets/conditions.h"
#include "core/words/words.h"

namespace plugside {

namespace {

struct QuestionRow {
    Question question;
    const char* text;
    const char* asked;
};

constexpr std::array<QuestionRow, 28> questions{{
    {Question::soil_moisture, "soil-moisture", Words::later("How wet is the soil where the runs lie?")},
    {Question::rain_due, "rain-due", Words::later("Is rain due in the next three days?")},
    {Question::irrigation_due, "irrigation-due", Words::later("Is irrigation due in the next three days?")},
    {Question::water_days, "water-days", Words::later("How much rain and irrigation does each of the coming days bring?")},
    {Question::soil_temperature, "soil-temperature", Words::later("How warm is the soil at the depth of the runs?")},
    {Question::soil_texture, "soil-texture", Words::later("What is the soil: sand or loose, loam, clay?")},
    {Question::soil_cracks, "soil-cracks", Words::later("Is the soil cracked?")},
    {Question::frost, "frost", Words::later("Is the ground frozen?")},
    {Question::crop, "crop", Words::later("Which crop or turf grows here?")},
    {Question::site_use, "site-use", Words::later("What is the field used for?")},
    {Question::property, "property",
     Words::later("Is there a home, a school, a nursing home, a day care or a hospital on the property?")},
    {Question::children, "children", Words::later("Do children come here, and from when to when?")},
    {Question::public_visits, "public-visits", Words::later("Do other people come here, and from when to when?")},
    {Question::pets, "pets", Words::later("Do pets come here, and from when to when?")},
    {Question::stock, "stock", Words::later("Does stock come here, and from when to when?")},
    {Question::buildings_drawn, "buildings-drawn",
     Words::later("Is every building within 100 ft (30 m) of the field on the map?")},
    {Question::water_near, "water-near",
     Words::later("Is there a well, spring, pond or ditch within 100 ft (30 m) that is not on the map?")},
    {Question::wildlife, "wildlife", Words::later("What does the wildlife agency say of protected animals in this county?")},
    {Question::fumigation_plan, "fumigation-plan", Words::later("Is the written fumigation management plan in hand?")},
    {Question::utilities, "utilities", Words::later("Has the one-call service been called, and are the lines marked?")},
    {Question::neighbours_told, "neighbours-told", Words::later("Have the neighbours been told?")},
    {Question::trap_law_read, "trap-law-read", Words::later("Has the law on traps of this state and town been read?")},
    {Question::pesticide_office, "pesticide-office",
     Words::later("What does the state's pesticide office say of strychnine?")},
    {Question::licence, "licence", Words::later("Which applicator's licence is held, and until when is it valid?")},
    {Question::label, "label", Words::later("What does the label in hand say?")},
    {Question::ingredient, "ingredient", Words::later("Which active ingredient does the label name?")},
    {Question::method, "method", Words::later("Which method is chosen?")},
    {Question::placement, "placement", Words::later("Where does the method put what is set: in the lateral, in the run?")},
}};

const QuestionRow& row_of(Question question) {
    return *std::find_if(questions.begin(), questions.end(),
                         [&](const QuestionRow& row) { return row.question == question; });
}

template <typename Value>
struct Word {
    Value value;
    const char* text;
    const char* shown;
};

constexpr std::array<Word<SoilMoisture>, 3> moistures{{{SoilMoisture::dry, "dry", Words::later("dry")},
                                                       {SoilMoisture::damp, "damp", Words::later("damp")},
                                                       {SoilMoisture::wet, "wet", Words::later("wet")}}};
constexpr std::array<Word<SoilTexture>, 3> textures{
    {{SoilTexture::sand_or_loose, "sand-or-loose", Words::later("sand or loose")},
     {SoilTexture::loam, "loam", Words::later("loam")},
     {SoilTexture::clay, "clay", Words::later("clay")}}};
constexpr std::array<Word<SiteUse>, 9> uses{
    {{SiteUse::food_crop, "food-crop", Words::later("food crop")},
     {SiteUse::forage, "forage", Words::later("hay or forage")},
     {SiteUse::orchard_or_vineyard, "orchard-or-vineyard", Words::later("orchard or vineyard")},
     {SiteUse::pasture, "pasture", Words::later("pasture")},
     {SiteUse::nursery, "nursery", Words::later("plant nursery")},
     {SiteUse::lawn, "lawn", Words::later("lawn or park")},
     {SiteUse::sports_field, "sports-field", Words::later("sports field")},
     {SiteUse::fallow, "fallow", Words::later("fallow")},
     {SiteUse::other, "other-use", Words::later("another use")}}};
constexpr std::array<Word<PropertyUse>, 7> properties{
    {{PropertyUse::home, "home", Words::later("home")},
     {PropertyUse::school, "school", Words::later("school")},
     {PropertyUse::school_athletic_field, "school-athletic-field", Words::later("athletic field of a school")},
     {PropertyUse::nursing_home, "nursing-home", Words::later("nursing home")},
     {PropertyUse::day_care, "day-care", Words::later("day care")},
     {PropertyUse::hospital, "hospital", Words::later("hospital")},
     {PropertyUse::none_of_these, "none-of-these", Words::later("none of these")}}};
constexpr std::array<Word<WildlifeAnswer>, 4> wildlife{
    {{WildlifeAnswer::awaited, "awaited", Words::later("asked, no answer yet")},
     {WildlifeAnswer::none_known, "none-known", Words::later("none known here")},
     {WildlifeAnswer::known_here, "known-here", Words::later("known here")},
     {WildlifeAnswer::terms_named, "agency-terms", Words::later("known here; the agency has named its terms")}}};
constexpr std::array<Word<UtilitiesCall>, 3> calls{
    {{UtilitiesCall::not_called, "not-called", Words::later("not called")},
     {UtilitiesCall::awaited, "called", Words::later("called, not marked yet")},
     {UtilitiesCall::marked, "marked", Words::later("called and marked")}}};
constexpr std::array<Word<OfficeAnswer>, 3> offices{
    {{OfficeAnswer::not_asked, "not-asked", Words::later("not asked")},
     {OfficeAnswer::terms_named, "terms-named", Words::later("has named its terms")},
     {OfficeAnswer::withdrawn, "withdrawn", Words::later("withdrawn or banned here")}}};

template <typename Value, std::size_t count>
std::string word_of(const std::array<Word<Value>, count>& words, Value value) {
    for (const Word<Value>& word : words)
        if (word.value == value) return word.text;
    return words.front().text;
}

template <typename Value, std::size_t count>
std::optional<Value> value_of(const std::array<Word<Value>, count>& words, const std::string& text) {
    for (const Word<Value>& word : words)
        if (text == word.text) return word.value;
    return std::nullopt;
}

template <typename Value, std::size_t count>
const char* shown_in(const std::array<Word<Value>, count>& words, const std::string& text) {
    for (const Word<Value>& word : words)
        if (text == word.text) return word.shown;
    return nullptr;
}

}  // namespace

const std::vector<Question>& all_questions() {
    static const std::vector<Question> all = [] {
        std::vector<Question> in_order;
        for (const QuestionRow& row : questions) in_order.push_back(row.question);
        return in_order;
    }();
    return all;
}

std::string to_text(Question question) { return row_of(question).text; }

std::optional<Question> question_from_text(const std::string& text) {
    for (const QuestionRow& row : questions)
        if (text == row.text) return row.question;
    return std::nullopt;
}

std::string asked_as(Question question) { return Words::shown(row_of(question).asked); }

std::string to_text(SoilMoisture value) { return word_of(moistures, value); }
std::string to_text(SoilTexture value) { return word_of(textures, value); }
std::string to_text(SiteUse value) { return word_of(uses, value); }
std::string to_text(PropertyUse value) { return word_of(properties, value); }
std::string to_text(WildlifeAnswer value) { return word_of(wildlife, value); }
std::string to_text(UtilitiesCall value) { return word_of(calls, value); }
std::string to_text(OfficeAnswer value) { return word_of(offices, value); }
std::optional<SoilMoisture> soil_moisture_from_text(const std::string& text) { return value_of(moistures, text); }
std::optional<SoilTexture> soil_texture_from_text(const std::string& text) { return value_of(textures, text); }
std::optional<SiteUse> site_use_from_text(const std::string& text) { return value_of(uses, text); }
std::optional<PropertyUse> property_use_from_text(const std::string& text) { return value_of(properties, text); }
std::optional<WildlifeAnswer> wildlife_answer_from_text(const std::string& text) { return value_of(wildlife, text); }
std::optional<UtilitiesCall> utilities_call_from_text(const std::string& text) { return value_of(calls, text); }
std::optional<OfficeAnswer> office_answer_from_text(const std::string& text) { return value_of(offices, text); }

std::string answer_shown(const std::string& word) {
    for (const char* shown :
         {shown_in(moistures, word), shown_in(textures, word), shown_in(uses, word), shown_in(properties, word),
          shown_in(wildlife, word), shown_in(calls, word), shown_in(offices, word)})
        if (shown != nullptr) return Words::shown(shown);
    return word;
}

}  // namespace plugside
