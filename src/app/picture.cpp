#include "app/picture.hpp"

#include "app/frame.hpp"
#include "app/textures.hpp"
#include "bench/act.hpp"
#include "commands/inputs.hpp"
#include "commands/paper.hpp"
#include "commands/paper_desk.hpp"
#include "commands/picture_answers.hpp"
#include "commands/picture_images.hpp"
#include "commands/script.hpp"
#include "commands/show.hpp"
#include "paint/digits.hpp"
#include "paint/range/learn_bytes.hpp"
#include "screens/atlas.hpp"
#include "screens/paint.hpp"
#include "studio/studio.hpp"
#include "studio/told_files.hpp"
#include "window/offscreen.hpp"
#include "words/app_says.hpp"
#include "words/commands_says.hpp"

#define STB_IMAGE_WRITE_STATIC
#define STB_IMAGE_WRITE_IMPLEMENTATION
#include <stb/stb_image_write.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <iostream>
#include <variant>

namespace app {

namespace {

using Say = words::AppSay;

// Forgets what came after that moment. Answers with the session that went on after it, which is
// the one whose screen it was.
std::optional<std::string> forget_later(std::vector<session::File>& files, std::int64_t wall_ms) {
  std::optional<std::string> went_on;
  for (session::File& file : files) {
    const auto later = std::remove_if(file.lines.begin(), file.lines.end(),
                                      [&](const auto& line) { return line.at > wall_ms; });
    if (later != file.lines.begin() && later != file.lines.end()) went_on = file.session;
    file.lines.erase(later, file.lines.end());
  }
  return went_on;
}

// As if that session were running, all of it saved.
void sit_down_as(bench::Bench& bench, const std::string& session, const bench::Now& now) {
  for (const session::Log& log : bench.logs) {
    if (log.session != session || log.lines.empty()) continue;
    const session::Line &first = log.lines.front(), &last = log.lines.back();
    bench.sitting.session = session;
    bench.sitting.began_run_ms = now.run_ms - (now.wall_ms - (first.at - first.t));
    bench.sitting.next_n = last.n + 1;
    bench.saving.confirmed = last.n;
  }
}

// What a tap wants to see is looked at; nothing is written.
void show_photos(bench::Bench& bench, const std::vector<bench::PhotoWanted>& all,
                 const commands::PictureHome& home, const bench::Now& now) {
  for (const bench::PhotoWanted& wanted : all)
    if (!std::holds_alternative<bench::KeepPicture>(wanted))
      bench::step(bench, commands::answer(home, wanted), now);
}

words::Result<void> tap(bench::Bench& bench, const bench::PadId& pad,
                        const commands::PictureHome& home, const bench::Now& now) {
  const bench::Layout layout = bench::layout(bench);
  if (!bench::pad_of(layout, pad)) return tl::make_unexpected(commands::not_there(pad, layout));
  const bench::Effects done = bench::step(bench, bench::Tap{pad}, now);
  if (done.speak) {
    words::say_in(*done.speak);
    bench::step(bench, bench::Spoken{*done.speak}, now);
  }
  show_photos(bench, done.photos, home, now);
  return {};
}

// All there is to learn, here and now.
void learn(bench::Bench& bench, const bench::Now& now) {
  for (bool more = true; more;) {
    const bench::Effects effects = bench::step(bench, bench::Study{}, now);
    more = effects.study;
    if (effects.learn)
      more = bench::step(
                 bench,
                 bench::Fitted{paint::learn_bytes(effects.learn->problem), effects.learn->to_tell},
                 now)
                 .study;
  }
}

words::Result<void> turn_to(bench::Bench& bench, const PictureOptions& options,
                            const commands::PictureHome& home, const bench::Now& now) {
  if (options.night) bench.night = true;
  const bool slab = options.screen == bench::Screen::slab;
  if (slab || options.batch) {
    const auto batch = commands::find_batch(bench.logs, options.batch.value_or("last"));
    if (!batch) return tl::make_unexpected(batch.error());
    if (slab)
      bench.batch = batch->id;
    else
      bench.book.page = bench::BatchPage{batch->id, {}};
  }
  bench.screen = options.screen;
  const std::string page = bench::batch_of(bench.book.page);
  if (options.screen == bench::Screen::photos) {
    bench::Effects none;
    bench::open_photos(bench, page, false, none);
  }
  bench::step(bench, bench::Tick{}, now);
  learn(bench, now);
  for (std::size_t at = 0; at < options.taps.size(); ++at)
    if (const auto tapped = tap(bench, options.taps[at], home, now); !tapped)
      return tl::make_unexpected(wrong_tap(at, tapped.error()));
  return {};
}

bench::Now moment_of(const PictureOptions& options) {
  bench::Now now = commands::real_now();
  if (options.at) now.wall_ms = options.at->wall_ms;
  if (options.at) now.utc_offset_min = options.at->utc_offset_min;
  return now;
}

std::string png_of(const window::Picture& picture) {
  std::string png;
  const auto add = [](void* to, void* bytes, int count) {
    static_cast<std::string*>(to)->append(static_cast<const char*>(bytes),
                                          static_cast<std::size_t>(count));
  };
  stbi_write_png_to_func(add, &png, picture.size.w, picture.size.h, 3, picture.rgb.data(),
                         picture.size.w * 3);
  return png;
}

// Where no studio was named and there is none yet, the first day of one is to be seen.
words::Result<studio::Reading> read(const PictureOptions& options, const studio::Path& home) {
  const studio::Path fallback = studio::fallback_folder(studio::state_folder(), home);
  auto fault = commands::fault_of_studio(home, fallback);
  if (fault && !options.studio && fault->what == words::CommandsSay::no_studio) return {};
  if (fault) return tl::make_unexpected(*std::move(fault));
  return commands::read_studio({home, fallback});
}

// Photos that a frame lacks; true where there is something new to draw.
bool make_lacking(bench::Bench& bench, Textures& textures, const commands::PictureHome& home,
                  const bench::Now& now) {
  const auto lacking = textures.take_lacking();
  if (!lacking) return false;
  for (const commands::WantedImage& wanted : *lacking) {
    const auto image = commands::make_image(home, wanted);
    if (image)
      textures.put(*image);
    else
      bench::step(bench, bench::ImageSeen{wanted.image, tl::make_unexpected(image.error())}, now);
  }
  return !lacking->empty();
}

// Which sizes are possible on such a display, where this one is not.
std::optional<words::Error> fault_of_size(const PictureOptions& options, double px_per_mm) {
  using screens::least_px_per_mm, screens::most_px_per_mm;
  if (px_per_mm >= least_px_per_mm && px_per_mm <= most_px_per_mm) return std::nullopt;
  const bench::Size& mm = options.mm;
  bench::Size least = bench::least_display;
  if (mm.h > mm.w) std::swap(least.w, least.h);
  constexpr double most = most_pixels;
  words::Args args;
  for (const double side : {mm.w, mm.h})
    args.emplace_back(words::Number(side, paint::decimals_as_read(side)));
  const std::array sides{std::max(mm.w, least.w), std::max(mm.h, least.h)};
  for (const double side : sides)
    args.emplace_back(words::Number(std::ceil(side * least_px_per_mm), 0));
  for (const double side : sides)
    args.emplace_back(words::Number(std::min(std::floor(side * most_px_per_mm), most), 0));
  return words::Error{Say::picture_size, std::move(args)};
}

}

words::Result<void> make_picture(const PictureOptions& options) {
  const bench::Now now = moment_of(options);
  const studio::Path home =
      options.studio ? studio::Path(*options.studio) : studio::default_studio();
  auto reading = read(options, home);
  if (!reading) return tl::make_unexpected(reading.error());
  const auto session =
      options.at ? forget_later(reading->files, now.wall_ms) : std::optional<std::string>();

  const double true_px_per_mm =
      std::min(options.size.w / options.mm.w, options.size.h / options.mm.h);
  const double px_per_mm = fitting_px_per_mm(options.size, true_px_per_mm);
  if (auto fault = fault_of_size(options, px_per_mm)) return tl::make_unexpected(*std::move(fault));
  // Else the onlooker is a session that never begins, so it needs no id.
  bench::Bench bench = bench::start("", "", display_of(options.size, px_per_mm, options.hand), now);
  bench.display.drawn_at = px_per_mm / true_px_per_mm;
  bench.spoken = words::spoken();
  bench.paper.folder = (std::filesystem::absolute(home) / commands::paper_folder).string();
  bench.sharing.folder = (std::filesystem::absolute(home) / studio::told_folder).string();
  session::Joined joined = session::join(commands::taken_out(reading->files));
  commands::say_what_is_lacking(*reading, joined.logs, std::cerr);
  bench::step(
      bench,
      bench::Loaded{std::move(joined.logs), std::move(joined.damage), std::move(reading->faults)},
      now);
  if (session) sit_down_as(bench, *session, now);
  const commands::PictureHome photos{std::filesystem::absolute(home), disk::posix_files,
                                     commands::thumbs_folder(), commands::pictures_folder()};
  bench.photos.there = true;
  bench.photos.folder = photos.folder;
  if (auto turned = turn_to(bench, options, photos, now); !turned) return turned;

  auto offscreen = window::Offscreen::open(options.size);
  if (!offscreen) return words::failure(Say::picture_not_drawn, {offscreen.error()});
  if (auto faces = screens::load_faces(px_per_mm); !faces) return faces;
  Textures textures;
  // Twice at least: ImGui shows a window of its own from the second frame on.
  window::Picture picture;
  int frames = 2;
  for (int frame = 0; frame < frames; ++frame) {
    const bench::View view = bench::view(bench, now);
    offscreen->begin_frame();
    draw(view, px_per_mm);
    picture = offscreen->end_frame(ground(view));
    if (more_letters()) ++frames;
    if (make_lacking(bench, textures, photos, now)) ++frames;
  }
  return commands::write_new(options.out, png_of(picture));
}

}
