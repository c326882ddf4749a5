#include "app/reading/reading_desk.h"

#include <algorithm>
#include <utility>

#include "app/reading/reading_words.h"
#include "core/words/words.h"

namespace plugside {

ReadingDesk::ReadingDesk(FieldSession& session, QObject* parent) : QObject(parent), session_(session) {
    connect(&session_, &FieldSession::field_replaced, this, [this] {
        if (std::exchange(reading_, false)) Q_EMIT read_done();
    });
    connect(&session_, &FieldSession::refused, this, [this](const QString& sentence) {
        if (std::exchange(reading_, false)) Q_EMIT read_failed(sentence);
    });
    connect(&session_.file_work(), &BackgroundWork::ended, this, [this] {
        looking_ = false;
        if (std::exchange(reading_, false)) Q_EMIT read_stopped();
    });
}

ReadingDesk::~ReadingDesk() { counting_.stop(); }

void ReadingDesk::lay_out(const FieldSession::Files& files, Purpose purpose) {
    if (files.empty()) return;
    if (empty() && !looking_) {
        purpose_ = purpose;
        told_ = purpose == Purpose::reading_again ? session_.told() : FileChoices{};
        files_.clear();
    }
    for (const auto& file : files)
        if (std::find(files_.begin(), files_.end(), file) == files_.end()) files_.push_back(file);
    looking_ = true;
    const bool asking = !empty() || purpose == Purpose::reading_again;
    session_.look_into_files([this, all = files_, told = choices(), asking](
                                 const Progress& progress, const BackgroundWork::Meanwhile&) -> BackgroundWork::Apply {
        auto looks = std::make_shared<std::vector<FileLook>>(sorted_files(all));
        for (std::size_t i = 0; i < looks->size() && !progress.stopped(); ++i) {
            progress.say(static_cast<double>(i) / static_cast<double>(looks->size()),
                         Words::later("looking into the files"));
            look_inside((*looks)[i], told, progress);
        }
        if (progress.stopped()) return {};
        const bool readable =
            std::any_of(looks->begin(), looks->end(), [](const FileLook& look) { return !cannot_be_read(look); });
        const bool deserves = std::any_of(looks->begin(), looks->end(),
                                          [](const FileLook& look) { return has_choices(look) || cannot_be_read(look); });
        return [this, looks, all, ask = asking || (readable && deserves)] {
            looking_ = false;
            if (ask)
                take(std::move(*looks));
            else
                read_at_once(all);
        };
    });
}

void ReadingDesk::lay_out_again() {
    const auto field = session_.field();
    if (!field || session_.files().empty() || !empty()) return;
    lay_out(session_.files(), Purpose::reading_again);
}

void ReadingDesk::read_at_once(const FieldSession::Files& files) {
    if (purpose_ == Purpose::adding)
        session_.add(files);
    else
        session_.open(files);
}

void ReadingDesk::take(std::vector<FileLook> looks) {
    // files brought later join those that lie here: what was said of these stays
    const FileChoices said = choices();
    std::set<std::filesystem::path> out;
    for (const std::size_t entry : left_out_) out.insert(looks_[entry].file());
    const bool again = purpose_ == Purpose::reading_again;
    looks_ = std::move(looks);
    told_.north = said.north;
    if (const auto field = session_.field(); field && again)
        for (const Walk& walk : field->survey.walks)
            for (const FileLook& look : looks_)
                if (is_from(walk.source, look.source())) told_.north.try_emplace(look.source(), walk.bearings_from);
    other_columns_.assign(looks_.size(), false);
    left_out_.clear();
    open_.clear();
    for (std::size_t i = 0; i < looks_.size(); ++i) {
        if (out.contains(looks_[i].file()) || (cannot_be_read(looks_[i]) && !again)) left_out_.insert(i);
        if (!cannot_be_read(looks_[i])) open_.insert(i);
    }
    Q_EMIT laid_out();
    work_on_open();
}

void ReadingDesk::clear() {
    counting_.stop();
    looks_.clear();
    left_out_.clear();
    open_.clear();
    files_.clear();
    told_ = {};
}

void ReadingDesk::leave_out(std::size_t entry, bool out) {
    if (!out && cannot_be_read(looks_[entry]) && purpose_ != Purpose::reading_again) return;
    if (out)
        left_out_.insert(entry);
    else
        left_out_.erase(entry);
    Q_EMIT look_changed(static_cast<int>(entry));
}

void ReadingDesk::change(std::size_t entry, FileLook look, bool other_columns) {
    looks_[entry] = std::move(look);
    other_columns_[entry] = other_columns_[entry] || other_columns;
    open_.insert(entry);
    Q_EMIT look_changed(static_cast<int>(entry));
    work_on_open();
}

// All that was not counted yet: work that is started takes the place of what was going on.
void ReadingDesk::work_on_open() {
    std::vector<std::pair<std::size_t, FileLook>> jobs;
    for (const std::size_t entry : open_) jobs.emplace_back(entry, looks_[entry]);
    if (jobs.empty()) return;
    counting_.start_in_stages(
        [this, jobs, anew = other_columns_](const Progress& progress,
                                            const BackgroundWork::Meanwhile& meanwhile) mutable -> BackgroundWork::Apply {
            for (auto& [entry, look] : jobs) {
                if (!anew[entry]) continue;
                preview_again(look, true);
                meanwhile([this, entry = entry, look = look] {
                    looks_[entry] = look;
                    other_columns_[entry] = false;
                    Q_EMIT look_changed(static_cast<int>(entry));
                });
            }
            for (auto& [entry, look] : jobs) {
                read_alone(look, progress);
                if (progress.stopped()) return {};
                meanwhile([this, entry = entry, look = look] {
                    looks_[entry] = look;
                    open_.erase(entry);
                    if (cannot_be_read(look) && purpose_ != Purpose::reading_again) left_out_.insert(entry);
                    Q_EMIT look_changed(static_cast<int>(entry));
                });
            }
            return {};
        });
}

North ReadingDesk::north_of(std::size_t entry) const {
    const auto told = told_.north.find(looks_[entry].source());
    return told == told_.north.end() ? North::not_told : told->second;
}

void ReadingDesk::tell_north(std::size_t entry, North north) {
    told_.north[looks_[entry].source()] = north;
    for (std::size_t i = 0; i < looks_.size(); ++i)
        if (looks_[i].source() == looks_[entry].source()) Q_EMIT look_changed(static_cast<int>(i));
}

void ReadingDesk::tell_north_of_all(North north) {
    for (std::size_t i = 0; i < looks_.size(); ++i)
        if (looks_[i].bare_fans > 0) tell_north(i, north);
}

std::vector<NamedPlace> ReadingDesk::places_beside(std::size_t entry) const {
    std::vector<NamedPlace> places;
    for (const bool with_marks : {true, false})
        for (std::size_t i = 0; i < looks_.size(); ++i)
            if (i != entry && !left_out(i) && looks_[i].middle && (looks_[i].marks > 0) == with_marks)
                places.push_back({name_of(looks_[i]), *looks_[i].middle});
    if (const auto field = session_.field(); field && purpose_ == Purpose::adding)
        places.push_back({tr("the open field"), field->frame.centre()});
    return places;
}

std::optional<std::size_t> ReadingDesk::first_open_question() const {
    for (std::size_t i = 0; i < looks_.size(); ++i)
        if (!left_out(i) && (needs_answer(looks_[i]) || cannot_be_read(looks_[i]))) return i;
    return std::nullopt;
}

std::size_t ReadingDesk::open_questions() const {
    std::size_t count = 0;
    for (std::size_t i = 0; i < looks_.size(); ++i)
        if (!left_out(i) && (needs_answer(looks_[i]) || cannot_be_read(looks_[i]))) ++count;
    return count;
}

bool ReadingDesk::settled() const {
    return std::all_of(open_.begin(), open_.end(), [this](std::size_t entry) { return left_out(entry); });
}

FileChoices ReadingDesk::choices() const {
    FileChoices choices = told_;
    for (const FileLook& look : looks_) note_choices(look, choices);
    return choices;
}

FieldSession::Files ReadingDesk::wanted() const {
    FieldSession::Files files;
    // the first file names the field and its walks come first: better a receiver's walk than a photograph
    for (const TakenFor sort :
         {TakenFor::handed_out, TakenFor::walk, TakenFor::table, TakenFor::layers, TakenFor::photographs, TakenFor::unknown})
        for (std::size_t i = 0; i < looks_.size(); ++i)
            if (looks_[i].taken_for == sort && !left_out(i))
                files.insert(files.end(), looks_[i].files.begin(), looks_[i].files.end());
    return files;
}

QStringList ReadingDesk::names_left_out() const {
    QStringList names;
    for (const std::size_t entry : left_out_) names << name_of(looks_[entry]);
    return names;
}

void ReadingDesk::read() {
    const FieldSession::Files files = wanted();
    if (files.empty() || reading_) return;
    counting_.stop();
    reading_ = true;
    switch (purpose_) {
        case Purpose::opening: session_.open(files, choices()); break;
        case Purpose::adding: session_.add(files, choices()); break;
        case Purpose::reading_again: session_.read_again(files, choices()); break;
    }
}

void ReadingDesk::stop_reading() {
    if (!reading_) return;
    session_.file_work().stop();
    work_on_open();
}

}  // namespace plugside
