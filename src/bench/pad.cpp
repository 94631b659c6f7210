#include "bench/pad.hpp"

#include <array>
#include <utility>

namespace bench {

namespace {

constexpr auto names = std::to_array<std::pair<PadKind, std::string_view>>({
    {PadKind::shelf, "shelf"},
    {PadKind::plan, "plan"},
    {PadKind::slab, "slab"},
    {PadKind::pans, "pans"},
    {PadKind::book, "book"},
    {PadKind::tablet, "tablet"},
    {PadKind::sound, "sound"},
    {PadKind::night, "night"},
    {PadKind::wipe, "wipe"},
    {PadKind::unlock, "unlock"},
    {PadKind::add, "add"},
    {PadKind::pigments, "pigments"},
    {PadKind::more, "more"},
    {PadKind::weigh_paint, "weigh_paint"},
    {PadKind::to_jar, "to_jar"},
    {PadKind::from_jar, "from_jar"},
    {PadKind::spilt, "spilt"},
    {PadKind::other_paint, "other_paint"},
    {PadKind::paint_of, "paint_of"},
    {PadKind::lines, "lines"},
    {PadKind::earlier, "earlier"},
    {PadKind::line, "line"},
    {PadKind::other_amount, "other_amount"},
    {PadKind::five_earlier, "five_earlier"},
    {PadKind::take_back, "take_back"},
    {PadKind::found, "found"},
    {PadKind::parts, "parts"},
    {PadKind::by_volume, "by_volume"},
    {PadKind::want, "want"},
    {PadKind::pan_size, "pan_size"},
    {PadKind::cautions, "cautions"},
    {PadKind::cautions_read, "cautions_read"},
    {PadKind::kind_of, "kind_of"},
    {PadKind::card, "card"},
    {PadKind::new_card, "new_card"},
    {PadKind::kept_away, "kept_away"},
    {PadKind::put_away, "put_away"},
    {PadKind::bring_back, "bring_back"},
    {PadKind::fact, "fact"},
    {PadKind::says, "says"},
    {PadKind::choice, "choice"},
    {PadKind::card_done, "card_done"},
    {PadKind::another, "another"},
    {PadKind::dropper, "dropper"},
    {PadKind::bottle, "bottle"},
    {PadKind::undo, "undo"},
    {PadKind::pass, "pass"},
    {PadKind::gather, "gather"},
    {PadKind::back_on_slab, "back_on_slab"},
    {PadKind::to_pans, "to_pans"},
    {PadKind::close, "close"},
    {PadKind::dot, "dot"},
    {PadKind::trouble, "trouble"},
    {PadKind::felt, "felt"},
    {PadKind::amount, "amount"},
    {PadKind::bottle_of, "bottle_of"},
    {PadKind::lost_count, "lost_count"},
    {PadKind::specks, "specks"},
    {PadKind::trouble_is, "trouble_is"},
    {PadKind::digit, "digit"},
    {PadKind::point, "point"},
    {PadKind::erase, "erase"},
    {PadKind::enter, "enter"},
    {PadKind::leave, "leave"},
    {PadKind::pigment, "pigment"},
    {PadKind::binder, "binder"},
    {PadKind::page_back, "page_back"},
    {PadKind::page_on, "page_on"},
    {PadKind::weigh, "weigh"},
    {PadKind::celsius, "celsius"},
    {PadKind::humidity, "humidity"},
    {PadKind::name, "name"},
    {PadKind::search, "search"},
    {PadKind::begin, "begin"},
    {PadKind::go_on, "go_on"},
    {PadKind::batch, "batch"},
    {PadKind::to_list, "to_list"},
    {PadKind::ranges, "ranges"},
    {PadKind::range_of, "range_of"},
    {PadKind::note_before, "note_before"},
    {PadKind::note_after, "note_after"},
    {PadKind::set_aside, "set_aside"},
    {PadKind::take_up, "take_up"},
    {PadKind::make_again, "make_again"},
    {PadKind::compare, "compare"},
    {PadKind::note, "note"},
    {PadKind::note_text, "note_text"},
    {PadKind::keep, "keep"},
    {PadKind::pan, "pan"},
    {PadKind::new_pan, "new_pan"},
    {PadKind::pour_all, "pour_all"},
    {PadKind::pour_g, "pour_g"},
    {PadKind::weigh_pan, "weigh_pan"},
    {PadKind::pan_card, "pan_card"},
    {PadKind::judge, "judge"},
    {PadKind::became, "became"},
    {PadKind::all_pans, "all_pans"},
    {PadKind::more_pans, "more_pans"},
    {PadKind::batch_back, "batch_back"},
    {PadKind::batch_on, "batch_on"},
    {PadKind::hand, "hand"},
    {PadKind::motion, "motion"},
    {PadKind::card_smaller, "card_smaller"},
    {PadKind::card_larger, "card_larger"},
    {PadKind::bind, "bind"},
});

}

std::string name_of(const PadId& pad) {
  for (const auto& [kind, name] : names)
    if (kind == pad.kind)
      return pad.arg.empty() ? std::string(name) : std::string(name) + " " + pad.arg;
  return "";
}

std::optional<PadId> pad_named(std::string_view text) {
  const std::size_t space = text.find(' ');
  const std::string_view head = text.substr(0, space);
  const std::string_view arg = space == std::string_view::npos ? "" : text.substr(space + 1);
  for (const auto& [kind, name] : names)
    if (!name.empty() && name == head) return PadId{kind, std::string(arg)};
  return std::nullopt;
}

}
