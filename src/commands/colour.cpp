#include "commands/colour.hpp"

#include "bench/colour_words.hpp"
#include "bench/match.hpp"
#include "bench/match_words.hpp"
#include "colour/match.hpp"
#include "colour/propose.hpp"
#include "commands/measured.hpp"
#include "commands/show.hpp"
#include "session/check_value.hpp"
#include "studio/photo_pixels.hpp"
#include "studio/pieces.hpp"
#include "words/colour_says.hpp"
#include "words/commands_says.hpp"

#include <array>
#include <cmath>

namespace commands {

namespace {

using colour::Box;
using colour::Regions;
using words::Number;
using Say = words::CommandsSay;

tl::unexpected<words::Error> refused(const std::string& photo, const words::Error& why) {
  return words::failure(Say::file_refused, {photo, words::Inner(why)});
}

tl::unexpected<words::Error> untold(colour::Untold why, const std::string& photo, bool named) {
  const bool by_place = !named && why != colour::Untold::no_colours;
  return words::failure(by_place ? Say::colour_untold_found : Say::colour_untold,
                        {photo, words::say(bench::words_of(why))});
}

struct Page {
  std::string text;
  void line(words::Sentence id, const words::Args& args = {}) {
    text += printable(words::say(id, args)) + "\n";
  }
  void inner_line(words::Sentence id, const words::Args& args = {}) {
    text += "  ";
    line(id, args);
  }
};

Number doubt(double sd) { return {colour::nineteen_in_twenty * sd, 1}; }

std::string hex_of(const colour::Lab& d65) {
  return "#" + session::to_hex(on_screen(d65)).substr(2);
}

std::string box_words(const Box& box) {
  return std::to_string(box.x) + "," + std::to_string(box.y) + "," + std::to_string(box.width) +
         "," + std::to_string(box.height);
}

struct Swatch {
  Regions regions;
  colour::Reading reading;
};

// As it would be kept.
session::Photo kept_as(const Swatch& swatch, const std::string& bytes) {
  session::Photo photo;
  photo.sha256 = studio::sha256(bytes);
  photo.measured = measured_of(swatch.reading);
  return photo;
}

words::Result<Swatch> read(const colour::Photo& photo, const Regions& regions,
                           const std::string& name, bool named) {
  const auto reading = colour::read_swatch(photo, regions);
  if (!reading) return untold(reading.error(), name, named);
  return Swatch{regions, *reading};
}

// Paper beside a swatch that was named: what is found beside the proposal that it lies on.
std::vector<Box> paper_for(const Box& swatch, const std::vector<Regions>& found) {
  for (const Regions& regions : found)
    if (colour::overlap(regions.swatch, swatch)) return regions.paper;
  return {};
}

void say_reading(Page& page, const Swatch& swatch, const std::string& name) {
  const colour::Reading& r = swatch.reading;
  const colour::Three sd = colour::uncertainty(r);
  page.line(Say::colour_where,
            {name, box_words(swatch.regions.swatch), std::to_string(swatch.regions.paper.size())});
  page.line(Say::colour_lab, {Number(r.d50.l, 1), doubt(sd[0]), Number(r.d50.a, 1), doubt(sd[1]),
                              Number(r.d50.b, 1), doubt(sd[2])});
  page.line(Say::colour_d65,
            {Number(r.d65.l, 1), Number(r.d65.a, 1), Number(r.d65.b, 1), hex_of(r.d65)});
  if (r.graded > 8) page.inner_line(words::ColourSay::graded, {Number(r.graded, 0)});
  if (r.glints > 0.001) page.inner_line(words::ColourSay::glints, {Number(100 * r.glints, 1)});
  if (r.beyond) page.inner_line(words::ColourSay::beyond);
}

void say_kept(Page& page, const session::Measured& m, const std::string& name) {
  const colour::Lab d65 = colour::under_d65({m.l, m.a, m.b});
  page.line(Say::colour_kept, {name});
  page.line(Say::colour_lab, {Number(m.l, 1), doubt(m.l_u), Number(m.a, 1), doubt(m.a_u),
                              Number(m.b, 1), doubt(m.b_u)});
  page.line(Say::colour_d65, {Number(d65.l, 1), Number(d65.a, 1), Number(d65.b, 1),
                              "#" + session::to_hex(m.shown).substr(2)});
}

colour::Lab lab_of(const session::Photo& photo) {
  return {photo.measured->l, photo.measured->a, photo.measured->b};
}

// In the window's words, with the numbers above that they are about.
void say_ways(Page& page, const colour::Match& m, const colour::Lab& one,
              const colour::Lab& other) {
  const std::array<bench::Way, 3> ways = bench::ways_of(m);
  const auto say = [&](Say id, const bench::Way& way, double from, double to, int decimals) {
    page.line(id, {bench::way_words(way), Number(from, decimals), Number(to, decimals),
                   Number(std::abs(way.by.by), 1), Number(colour::nine_in_ten * way.by.sd, 1)});
  };
  say(Say::way_in_l, ways[0], one.l, other.l, 1);
  say(Say::way_in_c, ways[1], colour::chroma(one), colour::chroma(other), 1);
  say(Say::way_in_h, ways[2], colour::hue_degrees(one), colour::hue_degrees(other), 0);
}

// How `other` is, beside `one`.
void say_match(Page& page, const session::Photo& one, const session::Photo& other,
               const colour::Repeats& repeats, Say is, const words::Args& names) {
  const bench::Compared both = bench::compared(one, other, repeats);
  const colour::Match& m = both.match;
  page.line(Say::match_difference, {Number(m.difference, 1), Number(m.low, 1), Number(m.high, 1)});
  const colour::Seen least = colour::seen(m.low), most = colour::seen(m.high);
  if (least == most)
    page.line(Say::match_seen, {words::say(bench::words_of(least))});
  else
    page.line(Say::match_seen_between,
              {words::say(bench::words_of(least)), words::say(bench::words_of(most))});
  page.line(is, names);
  say_ways(page, m, lab_of(one), lab_of(other));
  page.line(both.taken == colour::Taken::one_photo ? Say::match_one_photo : Say::match_two_photos);
  if (both.repeats == 1) page.inner_line(words::ColourSay::repeat_photo);
  if (both.repeats > 1)
    page.inner_line(words::ColourSay::repeat_photos, {std::to_string(both.repeats)});
}

words::Result<Swatch> first_of(const colour::Photo& photo, const ColourWanted& wanted,
                               const std::vector<Regions>& found) {
  if (!wanted.swatch && found.empty()) return words::failure(Say::colour_no_swatch, {wanted.name});
  Regions regions =
      wanted.swatch ? Regions{*wanted.swatch, paper_for(*wanted.swatch, found)} : found.front();
  if (!wanted.paper.empty()) regions.paper = wanted.paper;
  return read(photo, regions, wanted.name, wanted.swatch.has_value());
}

// The one that was named; where nothing was, the second that was found.
std::optional<Regions> second_of(const ColourWanted& wanted, const std::vector<Regions>& found) {
  if (wanted.beside) {
    Regions regions{*wanted.beside, paper_for(*wanted.beside, found)};
    if (regions.paper.empty()) regions.paper = wanted.paper;
    return regions;
  }
  const bool alone = wanted.swatch || wanted.against || wanted.against_read;
  if (alone || found.size() < 2) return std::nullopt;
  return found[1];
}

}

words::Result<Box> box_of(const std::string& text) {
  std::vector<int> numbers;
  std::string digits;
  for (const char c : text + ",") {
    if (c >= '0' && c <= '9' && digits.size() < 6) {
      digits += c;
    } else if (c == ',' && !digits.empty()) {
      numbers.push_back(std::stoi(digits));
      digits.clear();
    } else {
      return words::failure(Say::colour_bad_box, {text});
    }
  }
  if (numbers.size() != 4 || numbers[2] == 0 || numbers[3] == 0)
    return words::failure(Say::colour_bad_box, {text});
  return Box{numbers[0], numbers[1], numbers[2], numbers[3]};
}

words::Result<ColourSaid> colour_shown(const ColourWanted& wanted) {
  const auto photo = studio::read_photo(wanted.bytes);
  if (!photo) return refused(wanted.name, photo.error());
  const std::vector<Regions> found = colour::propose_regions(*photo);
  const auto one = first_of(*photo, wanted, found);
  if (!one) return tl::make_unexpected(one.error());
  Page page;
  say_reading(page, *one, wanted.name);

  if (const auto regions = second_of(wanted, found)) {
    if (colour::overlap(regions->swatch, one->regions.swatch))
      return untold(colour::Untold::overlapping, wanted.name, true);
    const auto other = read(*photo, *regions, wanted.name, wanted.beside.has_value());
    if (!other) return tl::make_unexpected(other.error());
    say_reading(page, *other, wanted.name);
    say_match(page, kept_as(*one, wanted.bytes), kept_as(*other, wanted.bytes), wanted.repeats,
              Say::match_second, {});
  }
  const words::Args names{wanted.name, wanted.against_name};
  if (const auto& read = wanted.against_read) {
    say_kept(page, *read->measured, wanted.against_name);
    say_match(page, *read, kept_as(*one, wanted.bytes), wanted.repeats, Say::match_new, names);
  }
  if (wanted.against) {
    ColourWanted plain;
    plain.bytes = *wanted.against;
    plain.name = wanted.against_name;
    const auto second = studio::read_photo(plain.bytes);
    if (!second) return refused(plain.name, second.error());
    const auto other = first_of(*second, plain, colour::propose_regions(*second));
    if (!other) return tl::make_unexpected(other.error());
    say_reading(page, *other, plain.name);
    say_match(page, kept_as(*other, plain.bytes), kept_as(*one, wanted.bytes), wanted.repeats,
              Say::match_new, names);
  }
  const bool chosen = wanted.swatch || found.size() == 1;
  return ColourSaid{page.text, measured_of(one->reading), chosen};
}

}
