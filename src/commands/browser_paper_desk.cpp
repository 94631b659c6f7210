#include "commands/browser_paper_desk.hpp"

#include "commands/browser_text.hpp"
#include "words/paper_says.hpp"

#include <emscripten/emscripten.h>

#include <deque>
#include <utility>

extern "C" { // browser_paper_desk.js
// Begun within the tap itself, as some browsers want it; answered later by slabside_paper_went.
void slabside_put_on_paper(const char* stem, const char* ending, const char* bytes,
                           std::size_t count);
void slabside_fetch_codes(); // answered by slabside_codes_came
}

namespace commands {

namespace {

using words::PaperSay;

struct PaperNews {
  std::function<void()> wake = {};
  std::deque<bench::Input> news = {};
  int under_way = 0;
  std::vector<std::function<void()>> want_codes = {};
};

PaperNews& paper_news() {
  static PaperNews one;
  return one;
}

// Labels bear a code, which the page makes.
void get_ready(const bench::PaperWanted& wanted, std::function<void()> then) {
  if (wanted.kind != bench::PaperKind::labels) return then();
  ++paper_news().under_way;
  paper_news().want_codes.push_back(std::move(then));
  slabside_fetch_codes();
}

void codes_came(const std::string& why) {
  PaperNews& papers = paper_news();
  for (const auto& then : std::exchange(papers.want_codes, {})) {
    --papers.under_way;
    if (why.empty())
      then();
    else
      papers.news.push_back(bench::PaperWritten{words::failure(PaperSay::paper_no_codes, {why})});
  }
  if (papers.wake) papers.wake();
}

void put_on_paper(const HandedFile& file) {
  ++paper_news().under_way;
  slabside_put_on_paper(file.stem.c_str(), file.ending.c_str(), file.bytes.data(),
                        file.bytes.size());
}

std::optional<bench::Input> next_paper() {
  if (paper_news().news.empty()) return std::nullopt;
  std::optional<bench::Input> first = std::move(paper_news().news.front());
  paper_news().news.pop_front();
  return first;
}

bench::PaperWritten paper_outcome(const std::string& name, bool printed, const std::string& why) {
  if (!why.empty())
    return {words::failure(printed ? PaperSay::paper_not_printed : PaperSay::paper_not_saved,
                           {name, why})};
  return {name, printed ? bench::PaperWay::to_print : bench::PaperWay::saved};
}

}

Papers browser_paper_desk(std::function<void()> wake) {
  paper_news().wake = std::move(wake);
  Papers papers;
  papers.get_ready = get_ready;
  papers.write = put_on_paper;
  papers.poll = next_paper;
  papers.is_busy = [] { return paper_news().under_way > 0 || !paper_news().news.empty(); };
  papers.in_browser = true;
  return papers;
}

}

extern "C" {

// `why`: the browser's own words of what went wrong; empty: nothing did.
EMSCRIPTEN_KEEPALIVE void slabside_paper_went(char* name, int printed, char* why) {
  commands::PaperNews& papers = commands::paper_news();
  --papers.under_way;
  const std::string of = commands::taken(name);
  papers.news.push_back(commands::paper_outcome(of, printed != 0, commands::taken(why)));
  if (papers.wake) papers.wake();
}

EMSCRIPTEN_KEEPALIVE void slabside_codes_came(char* why) {
  commands::codes_came(commands::taken(why));
}
}
