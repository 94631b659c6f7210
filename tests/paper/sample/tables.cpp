// Tables of batches with hostile names, for another program to read: paper_tables FOLDER
#include "paper/hand.hpp"
#include "paper/table.hpp"

#include <fstream>

int main(int count, char** words) {
  if (count != 2) return 2;
  auto names = hand::hostile_names();
  for (const char* name :
       {"plain", "a,b;c", "say \"x\"", "=1+1", "+2", "-3", "@SUM(A1)", "\t=4", "\r=5",
        "two\r\nlines", "'quote", " spaces ", "007", "1/2", "TRUE", "1e5", "2026-11-25", "＝1"})
    names.push_back(name);
  std::vector<session::Batch> batches;
  for (const std::string& name : names) {
    hand::Made made;
    session::Card odd = make::liquid("odd", session::CardKind::binder, {.gum = 1, .water = 2});
    odd.name = name;
    made.writer.card(odd);
    made.open(name);
    made.work();
    made.put(session::Added{"odd", session::Unit::g, 1.5, ""});
    made.put(session::Added{"moon", session::Unit::g, 1, ""});
    batches.push_back(made.batch());
  }
  const std::string folder = words[1];
  std::ofstream additions(folder + "/additions.csv", std::ios::binary);
  additions << paper::additions_table(batches, hand::offsets());
  std::ofstream totals(folder + "/totals.csv", std::ios::binary);
  totals << paper::totals_table(batches, hand::offsets());
  return additions.good() && totals.good() ? 0 : 1;
}
