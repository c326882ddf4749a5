#include "core/sets/work_order.h"

#include <algorithm>

#include "core/sets/cautions.h"
#include "core/words/words.h"

namespace plugside {

namespace {

bool same_matter(const SignedOverride& a, const SignedOverride& b) {
    return a.caution == b.caution && a.method == b.method && a.probe == b.probe;
}

bool is_blank(const std::string& text) {
    return std::all_of(text.begin(), text.end(),
                       [](char letter) { return letter == ' ' || letter == '\t' || letter == '\n'; });
}

}  // namespace

bool WalkingWishes::alike(const WalkingWishes& other) const {
    WalkingWishes with = *this;
    with.kept = other.kept;
    return with == other;
}

std::optional<Method> find_method(const WorkOrder& work, const std::string& id) {
    for (const Method& own : work.own_methods)
        if (own.id == id) return own;
    return built_in_method(id);
}

std::string method_at(const WorkOrder& work, const ProbeKey& probe) {
    for (const SetMethod& of_set : work.set_methods)
        if (of_set.probe == probe) return of_set.method;
    return work.method;
}

void choose_method(WorkOrder& work, const ProbeKey& probe, const std::string& method) {
    std::erase_if(work.set_methods, [&](const SetMethod& of_set) { return of_set.probe == probe; });
    if (!method.empty() && method != work.method) work.set_methods.push_back({probe, method});
}

std::optional<std::string> sign(WorkOrder& work, SignedOverride entry) {
    const Caution* caution = find_caution(entry.caution);
    if (caution == nullptr) return Words::tell("There is no caution \"{1}\" to sign.", {entry.caution});
    if (caution->weight == CautionWeight::stop)
        return Words::tell("A stop cannot be signed away: change the method, the place or what stands against it.");
    if (caution->weight == CautionWeight::mind)
        return Words::tell("This caution holds nothing back: there is nothing to sign.");
    if (is_blank(entry.name)) return Words::tell("Whoever signs gives their name.");
    if (is_blank(entry.reason)) return Words::tell("Whoever signs gives a reason.");
    take_signature_back(work, entry);
    work.signed_off.push_back(std::move(entry));
    return std::nullopt;
}

void take_signature_back(WorkOrder& work, const SignedOverride& entry) {
    std::erase_if(work.signed_off, [&](const SignedOverride& earlier) { return same_matter(earlier, entry); });
}

const SignedOverride* signature_on(const WorkOrder& work, const std::string& caution, const std::string& method,
                                   const ProbeKey& probe) {
    const SignedOverride* of_field = nullptr;
    for (const SignedOverride& entry : work.signed_off) {
        if (entry.caution != caution || entry.method != method) continue;
        if (entry.probe == probe) return &entry;
        if (!entry.probe) of_field = &entry;
    }
    return of_field;
}

std::string to_text(LicenceKind kind) {
    switch (kind) {
        case LicenceKind::none: return "none";
        case LicenceKind::private_applicator: return "private-applicator";
        case LicenceKind::commercial_applicator: return "commercial-applicator";
        case LicenceKind::other: break;
    }
    return "other";
}

std::optional<LicenceKind> licence_kind_from_text(const std::string& text) {
    for (const LicenceKind kind :
         {LicenceKind::none, LicenceKind::private_applicator, LicenceKind::commercial_applicator, LicenceKind::other})
        if (text == to_text(kind)) return kind;
    return std::nullopt;
}

}  // namespace plugside
