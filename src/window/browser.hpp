// The page around the canvas. A page is called and never waits, so whoever draws says what is to be
// called when.
#pragma once

#include <functional>
#include <optional>
#include <string>

namespace window {

struct Turns {
  std::function<void()> hear; // at once when something came, or when the time has come
  std::function<void()> show; // when the browser is about to draw, and it was asked for
};
void take_turns(Turns turns);

void ask_to_show();                          // once; not while the page is hidden
void hear_in(std::optional<double> seconds); // at the latest; the last word counts

// Which language the page is in, as its tag.
std::string page_language();

// What the tablet is set to for everything (Media Queries 5, 12.1 and 12.5).
bool prefers_dark();
bool prefers_less_motion();

// A frame is drawn: the page's words of waiting go. busy: what is kept is still being read; whoever
// cannot see the canvas is told (WAI-ARIA 1.2, aria-busy).
void show_canvas(bool busy);

// What a frame shows, as JSON, for the page's own buttons and text; the page asks nothing of it.
void tell(const std::string& shown);

void show_keeping(); // the page's own box, by which batches come in and out

// An end with words instead of the canvas. Nothing is called any more.
void give_up(const std::string& sentence);

}
