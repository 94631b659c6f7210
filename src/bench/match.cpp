#include "bench/match.hpp"

#include "bench/blame.hpp"
#include "bench/photos.hpp"
#include "bench/today.hpp"

#include <algorithm>

namespace bench {

namespace {

const BookEntry* entry_of(const Bench& bench, const std::string& batch) {
  const auto entry = bench.index.of.find(batch);
  return entry == bench.index.of.end() ? nullptr : &entry->second;
}

// That it was made again of, and what that was made again of.
std::set<std::string> line_of(const Bench& bench, std::string batch) {
  std::set<std::string> out;
  while (!batch.empty() && out.insert(batch).second) {
    const BookEntry* entry = entry_of(bench, batch);
    batch = entry ? entry->again_of : "";
  }
  return out;
}

bool share_a_batch(const std::set<std::string>& a, const std::set<std::string>& b) {
  return std::any_of(a.begin(), a.end(), [&](const std::string& one) { return b.count(one) > 0; });
}

colour::Reading reading_of(const session::Measured& m) {
  std::optional<colour::KeptParts> parts;
  if (const auto& p = m.parts)
    parts = {{p->l_own, p->a_own, p->b_own}, {p->l_white, p->a_white, p->b_white}};
  return colour::kept_reading({m.l, m.a, m.b}, {m.l_u, m.a_u, m.b_u}, parts);
}

struct BothRead {
  const session::Photo &a, &b;
};

// On one photo, where there is such a one; else as each was read last.
BothRead read_of(const BookEntry& a, const BookEntry& b) {
  for (auto one = a.read.rbegin(); one != a.read.rend(); ++one)
    for (auto other = b.read.rbegin(); other != b.read.rend(); ++other)
      if (one->sha256 == other->sha256) return {*one, *other};
  return {a.read.back(), b.read.back()};
}

MatchView::Of of(const Bench& bench, const std::string& batch, const BookEntry& entry,
                 const session::Photo& read) {
  return {batch,
          entry.name,
          bench.photos.there ? image_of(read) : "",
          read.measured->shown,
          made_at(entry),
          entry.offset_min};
}

constexpr std::size_t most_looked_at = 24; // batches, each of which has to be folded

// The latest of the workshop, each after the one of the same pigments before it.
std::vector<std::pair<std::string, std::string>> pairs_of(const Bench& bench) {
  std::vector<std::pair<std::string, std::string>> out;
  std::map<std::set<std::string>, std::string> after;
  std::size_t looked_at = 0;
  for (auto id = bench.batches.rbegin(); id != bench.batches.rend() && looked_at < most_looked_at;
       ++id, ++looked_at) {
    const BookEntry* entry = entry_of(bench, *id);
    if (!entry || entry->pigments.empty()) continue;
    std::string& later = after[entry->pigments];
    if (!later.empty()) out.push_back({*id, later});
    later = *id;
  }
  return out;
}

Made made_of(const Bench& bench, const Folded& folded) {
  const BookEntry* entry = entry_of(bench, folded->id);
  return {folded.get(), entry ? entry->offset_min.value_or(0) : 0};
}

std::vector<MatchView::Blame> blame_of(Bench& bench, const std::string& a, const std::string& b) {
  const Folded one = fold_of(bench, a), other = fold_of(bench, b);
  if (!one || !other) return {};
  std::vector<Folded> alive;
  std::vector<std::pair<Made, Made>> others;
  for (const auto& [before, after] : pairs_of(bench)) {
    if (before == a && after == b) continue; // what is asked about says nothing of what is usual
    const Folded first = fold_of(bench, before), second = fold_of(bench, after);
    if (!first || !second || first->newer || second->newer) continue;
    others.push_back({made_of(bench, first), made_of(bench, second)});
    alive.insert(alive.end(), {first, second});
  }
  return blame(made_of(bench, one), made_of(bench, other), others);
}

}

colour::Repeats repeats_of(const Bench& bench) {
  colour::Repeats out;
  for (const std::string& batch : bench.index.read_again) {
    const auto& read = bench.index.of.at(batch).read;
    for (std::size_t i = 1; i < read.size(); ++i)
      colour::add_repeat(out, reading_of(*read[i - 1].measured), reading_of(*read[i].measured));
  }
  return out;
}

Compared compared(const session::Photo& a, const session::Photo& b,
                  const colour::Repeats& repeats) {
  const bool one = a.sha256 == b.sha256;
  const auto taken = one ? colour::Taken::one_photo : colour::Taken::two_photos;
  return {colour::match(reading_of(*a.measured), reading_of(*b.measured), taken,
                        colour::doubt_of(repeats)),
          taken, one ? 0 : static_cast<std::size_t>(repeats.degrees / 3)};
}

std::optional<session::Photo> read_beside(const Bench& bench, const std::string& batch,
                                          const std::string& sha256) {
  const BookEntry* entry = entry_of(bench, batch);
  if (!entry || entry->read.empty()) return std::nullopt;
  for (auto one = entry->read.rbegin(); one != entry->read.rend(); ++one)
    if (one->sha256 == sha256) return *one;
  return entry->read.back();
}

std::string matched_with(const Bench& bench, const std::string& batch) {
  const BookEntry* one = entry_of(bench, batch);
  if (!one || one->discarded || one->read.empty()) return "";
  const std::set<std::string> line = line_of(bench, batch);
  for (auto id = bench.batches.rbegin(); id != bench.batches.rend(); ++id) {
    const BookEntry* other = *id == batch ? nullptr : entry_of(bench, *id);
    if (!other || other->read.empty() || other->discarded || made_at(*other) > made_at(*one))
      continue;
    const bool same = (!one->pigments.empty() && other->pigments == one->pigments) ||
                      share_a_batch(line, line_of(bench, *id));
    if (same && ended_good(*other)) return *id;
  }
  return "";
}

std::optional<MatchView> match_of(Bench& bench, const std::string& one, const std::string& other) {
  const BookEntry *its = entry_of(bench, one), *others = entry_of(bench, other);
  if (!its || !others || one == other || its->read.empty() || others->read.empty())
    return std::nullopt;
  const bool later = made_at(*others) < made_at(*its);
  const std::string &first = later ? other : one, &second = later ? one : other;
  const BookEntry &a = later ? *others : *its, &b = later ? *its : *others;
  const BothRead read = read_of(a, b);
  const Compared both = compared(read.a, read.b, repeats_of(bench));
  MatchView v;
  v.a = of(bench, first, a, read.a);
  v.b = of(bench, second, b, read.b);
  v.match = both.match;
  v.taken = both.taken;
  v.repeats = both.repeats;
  v.blame = blame_of(bench, first, second);
  return v;
}

}
