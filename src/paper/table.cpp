#include "paper/table.hpp"

#include "paper/csv.hpp"
#include "words/card_names.hpp"
#include "words/moments.hpp"

namespace paper {

using namespace session;

namespace {

Row heads(const std::vector<const char*>& names) {
  Row row;
  for (const char* name : names) row.push_back(word(name));
  return row;
}

void add(Row& row, const std::optional<paint::Amount>& amount) {
  row.push_back(amount ? number_cell(amount->value) : no_cell());
  row.push_back(amount ? number_cell(paint::uncertainty(*amount)) : no_cell());
}

// Words of the table's own, in no language: other programs read them.
const char* unit_word(Unit unit) {
  return unit == Unit::g ? "g" : unit == Unit::drops ? "drops" : "spoons";
}

const char* state_word(const Entry& e) {
  if (e.withdrawn) return "withdrawn";
  if (!e.grams) return "not_summed";
  return e.corrected ? "corrected" : "";
}

// The same in every language: a table is joined with others by its words.
std::string name_in_file(const Batch& batch, const std::string& id) {
  return words::card_name_for_file(id, card_name(batch, id));
}

Row addition_row(const Handed& handed, const Entry& e) {
  const Batch& batch = handed.batch;
  const auto* added = std::get_if<Added>(&e.event);
  const std::string& of = added ? added->of : std::get<CountLost>(e.event).of;
  Row row{text_cell(batch.id),
          text_cell(batch.name),
          text_cell(words::local_time(e.at, offset_of(handed, e.ref))),
          number_cell(e.clock),
          text_cell(name_in_file(batch, of)),
          text_cell(of),
          added ? number_cell(added->amount) : no_cell(),
          word(added ? unit_word(added->unit) : "count_lost"),
          added && !added->with.empty() ? text_cell(name_in_file(batch, added->with)) : no_cell()};
  add(row, e.grams);
  row.push_back(e.grams ? text_cell(name_of(e.place)) : no_cell());
  row.push_back(word(state_word(e)));
  return row;
}

Row total_row(const Handed& handed, const Total& total) {
  const Batch& batch = handed.batch;
  Row row{text_cell(batch.id),
          text_cell(batch.name),
          text_cell(words::local_time(batch.opened_at, offset_of(handed))),
          text_cell(words::card_name_for_file(total.card.id, total.card.name)),
          text_cell(total.card.id),
          text_cell(name_of(total.card.kind()))};
  add(row, batch.newer ? std::nullopt : std::optional(total.grams));
  double spoons = 0;
  for (const auto& [spoon, count] : total.spoons) spoons += count;
  for (const double measured : {total.drops, spoons, total.weighed_g})
    row.push_back(number_cell(measured));
  row.push_back(word(total.count_lost ? "yes" : ""));
  add(row, batch.standing.binder_ratio);
  return row;
}

}

std::string additions_table(const std::vector<Batch>& batches, const Offsets& offsets) {
  std::vector<Row> rows{heads({"batch", "batch_name", "at", "clock_s", "material", "card", "amount",
                               "unit", "tool", "g", "u_g", "place", "state"})};
  for (const Batch& batch : batches)
    for (const Entry& e : batch.entries)
      if (std::holds_alternative<Added>(e.event) || std::holds_alternative<CountLost>(e.event))
        rows.push_back(addition_row({batch, offsets}, e));
  return csv(rows);
}

std::string totals_table(const std::vector<Batch>& batches, const Offsets& offsets) {
  std::vector<Row> rows{
      heads({"batch", "batch_name", "opened_at", "material", "card", "kind", "g", "u_g", "drops",
             "spoons", "weighed_g", "count_lost", "ratio", "u_ratio"})};
  for (const Batch& batch : batches)
    for (const Total& total : went_in(batch)) rows.push_back(total_row({batch, offsets}, total));
  return csv(rows);
}

}
