#include "paper/csv.hpp"
#include "paper/hand.hpp"
#include "paper/table.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace table_test {

using namespace hand;
using paper::csv;
using paper::number_cell;
using paper::text_cell;

TEST_CASE("cells are quoted as RFC 4180 says") {
  CHECK(csv({{text_cell("plain"), text_cell("a,b"), text_cell("say \"x\"")}}) ==
        "plain,\"a,b\",\"say \"\"x\"\"\"\r\n");
  CHECK(csv({{text_cell("two\r\nlines")}}) == "\"two\r\nlines\"\r\n");
  CHECK(csv({{text_cell(""), paper::no_cell()}, {text_cell("é")}}) == ",\r\né\r\n");
}

TEST_CASE("a name that would be computed is text") {
  for (const char* name : {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "＝1+1"})
    CHECK(text_cell(name).bytes == "'" + std::string(name));
  for (const char* name : {"a=1", " =1", "'=1", "1-2"}) CHECK(text_cell(name).bytes == name);
  CHECK(text_cell(std::string("a\0b\x1b", 4)).bytes == "a\xef\xbf\xbd"
                                                       "b\xef\xbf\xbd");
}

TEST_CASE("numbers stay numbers, with a point") {
  CHECK(number_cell(-1.5).bytes == "-1.5");
  CHECK(number_cell(12).bytes == "12");
  CHECK(number_cell(0.1 + 0.2).bytes == "0.3");
  CHECK(number_cell(1234567.25).bytes == "1234567.25");
  CHECK(number_cell(1e-12).bytes == "0");
  CHECK(number_cell(std::nan("")).bytes == "");
  CHECK(number_cell(INFINITY).bytes == "");
}

TEST_CASE("every addition is a row, with what became of it") {
  Made made;
  made.open("Weir, blue");
  made.put(Added{"pb28", Unit::g, 12, ""});
  const Ref wrong = made.put(Added{"gum_12", Unit::g, 60, ""});
  const Ref drop = made.put(Added{"gum_12", Unit::drops, 1, "dropper"});
  made.writer.wait(2.5);
  made.put(Withdrawn{drop});
  made.put(Corrected{wrong, Corrected::Says{Added{"gum_12", Unit::g, 6, ""}}, std::nullopt});
  made.put(Added{"moon", Unit::g, 1, ""});
  made.put(CountLost{"gum_12"});
  CHECK(paper::additions_table({made.batch()}, offsets()) ==
        "batch,batch_name,at,clock_s,material,card,amount,unit,tool,g,u_g,place,state\r\n"
        "9a04d3e1c26f,\"Weir, blue\",2026-11-25T15:32:00+01:00,0,Cobalt blue,pb28,12,g,,12,"
        "0.028867513,slab,\r\n"
        "9a04d3e1c26f,\"Weir, blue\",2026-11-25T15:32:00+01:00,0,Gum 1:2,gum_12,6,g,,6,"
        "0.028867513,slab,corrected\r\n"
        "9a04d3e1c26f,\"Weir, blue\",2026-11-25T15:32:00+01:00,0,Gum 1:2,gum_12,1,drops,green bulb,"
        ",,,withdrawn\r\n"
        "9a04d3e1c26f,\"Weir, blue\",2026-11-25T15:32:02+01:00,2.5,moon,moon,1,g,,,,,not_summed\r\n"
        "9a04d3e1c26f,\"Weir, blue\",2026-11-25T15:32:02+01:00,2.5,Gum 1:2,gum_12,,count_lost,,0,"
        "0.15,slab,\r\n");
}

TEST_CASE("totals are a row a material, with the batch's ratio") {
  const Batch batch = ordinary();
  const std::string table = paper::totals_table({batch}, offsets());
  CHECK(has(table, "batch,batch_name,opened_at,material,card,kind,g,u_g,drops,spoons,weighed_g,"
                   "count_lost,ratio,u_ratio\r\n"));
  CHECK(has(table, "Cobalt blue,pb28,pigment,12,0.028867513,0,0,12,,"));
  CHECK(has(table, "Gum 1:2,gum_12,binder,"));
  CHECK(has(table, ",20,0,6,,"));
  CHECK(has(table, number_cell(batch.standing.binder_ratio->value).bytes));
}

TEST_CASE("no batch is a table of heads alone") {
  CHECK(paper::additions_table({}, {}).find("\r\n") == paper::additions_table({}, {}).size() - 2);
}

}
