#include "screens/paint.hpp"

#include "screens/fields.hpp"
#include "screens/textures.hpp"
#include "screens/theme.hpp"
#include "words/letters.hpp"
#include "words/say.hpp"

#include <imgui.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstring>

namespace screens {

namespace {

ImU32 packed(Colour c) { return IM_COL32(c.r, c.g, c.b, c.a); }

struct Painter {
  ImDrawList& list;
  double px;

  ImVec2 at(Point p) const { return {static_cast<float>(p.x * px), static_cast<float>(p.y * px)}; }
  float len(double mm) const { return static_cast<float>(mm * px); }

  // Straight edges on whole pixels stay sharp.
  ImVec2 sharp(Point p) const {
    return {static_cast<float>(std::round(p.x * px)), static_cast<float>(std::round(p.y * px))};
  }

  void operator()(const Box& b) const {
    const ImVec2 from = sharp({b.rect.x, b.rect.y}), to = sharp({b.rect.right(), b.rect.bottom()});
    if (b.fill.a) list.AddRectFilled(from, to, packed(b.fill), len(b.radius));
    if (b.outline.a && b.outline_mm > 0)
      list.AddRect(from, to, packed(b.outline), len(b.radius), 0, len(b.outline_mm));
  }

  void operator()(const Disc& d) const {
    if (d.fill.a) list.AddCircleFilled(at(d.centre), len(d.radius), packed(d.fill));
    if (d.outline.a && d.outline_mm > 0)
      list.AddCircle(at(d.centre), len(d.radius), packed(d.outline), 0, len(d.outline_mm));
  }

  std::vector<ImVec2> all(const std::vector<Point>& points) const {
    std::vector<ImVec2> out;
    for (const Point& p : points) {
      const ImVec2 next = at(p);
      // Points in one place have no direction, and the line would fray there.
      if (out.empty() || std::abs(next.x - out.back().x) + std::abs(next.y - out.back().y) > 0.05f)
        out.push_back(next);
    }
    return out;
  }

  void operator()(const Polygon& p) const {
    const auto points = all(p.points);
    const int count = static_cast<int>(points.size());
    if (p.fill.a) list.AddConvexPolyFilled(points.data(), count, packed(p.fill));
    if (p.outline.a && p.outline_mm > 0)
      list.AddPolyline(points.data(), count, packed(p.outline), ImDrawFlags_Closed,
                       len(p.outline_mm));
  }

  void operator()(const Polyline& l) const {
    const auto points = all(l.points);
    if (l.dash_mm > 0) return dashed(points, l);
    list.AddPolyline(points.data(), static_cast<int>(points.size()), packed(l.colour), 0,
                     len(l.width_mm));
    // Round ends and corners, as a pen leaves them; thin lines do not show theirs.
    if (l.width_mm < 0.4 || points.size() < 2) return;
    for (const ImVec2& point : points)
      list.AddCircleFilled(point, len(l.width_mm) / 2, packed(l.colour));
  }

  void dashed(const std::vector<ImVec2>& points, const Polyline& l) const {
    const float dash = len(l.dash_mm);
    for (std::size_t i = 1; i < points.size(); ++i) {
      const ImVec2 a = points[i - 1], b = points[i];
      const float length = std::hypot(b.x - a.x, b.y - a.y);
      for (float s = 0; s < length; s += 2 * dash) {
        const float e = std::min(s + dash, length) / length, f = s / length;
        list.AddLine({a.x + (b.x - a.x) * f, a.y + (b.y - a.y) * f},
                     {a.x + (b.x - a.x) * e, a.y + (b.y - a.y) * e}, packed(l.colour),
                     len(l.width_mm));
      }
    }
  }

  void operator()(const Gradient& g) const {
    const float top = sharp({0, g.rect.y}).y, bottom = sharp({0, g.rect.bottom()}).y;
    for (std::size_t i = 1; i < g.stops.size(); ++i) {
      const ImU32 left = packed(g.stops[i - 1].colour), right = packed(g.stops[i].colour);
      list.AddRectFilledMultiColor({len(g.stops[i - 1].x), top}, {len(g.stops[i].x), bottom}, left,
                                   right, right, left);
    }
  }

  // The whole picture within its place; a thumbnail fills it, and loses what is too long.
  void operator()(const Picture& p) const {
    const auto texture = texture_of(p.image, p.large);
    if (!texture) return;
    const double shape = texture->width / texture->height, place = p.rect.w / p.rect.h;
    const double across = std::min(1.0, place / shape), down = std::min(1.0, shape / place);
    const Point c = p.rect.centre();
    const double w = p.rect.w * (p.large ? std::min(1.0, shape / place) : 1),
                 h = p.rect.h * (p.large ? std::min(1.0, place / shape) : 1);
    const double u = p.large ? 0 : (1 - across) / 2, v = p.large ? 0 : (1 - down) / 2;
    list.AddImage(texture->id, sharp({c.x - w / 2, c.y - h / 2}), sharp({c.x + w / 2, c.y + h / 2}),
                  {static_cast<float>(u), static_cast<float>(v)},
                  {static_cast<float>(1 - u), static_cast<float>(1 - v)});
  }

  void operator()(const Text& t) const {
    const double width = width_mm(t.words, t.cap_mm, t.bold);
    const double left = t.anchor == Anchor::left     ? t.at.x
                        : t.anchor == Anchor::centre ? t.at.x - width / 2
                                                     : t.at.x - width;
    double pen = std::round(left * px);
    const double baseline = std::round(t.at.y * px); // on a whole pixel letters stay sharp
    const auto corner = [&](const Letter::Corner& c) {
      return ImVec2(static_cast<float>(pen + c.x), static_cast<float>(baseline + c.y));
    };
    for (std::size_t i = 0; i < t.words.size();) {
      const Letter letter = letter_of(words::next_letter(t.words, i), t.cap_mm, t.bold, px);
      if (!letter.blank) {
        list.PrimReserve(6, 4);
        list.PrimRectUV(corner(letter.from), corner(letter.to), {letter.from.u, letter.from.v},
                        {letter.to.u, letter.to.v}, packed(t.colour));
      }
      pen += letter.advance;
    }
  }
};

// Clips nest in ImGui; here there is one at a time.
struct Clipper {
  ImDrawList& list;
  const Painter& painter;
  bool on = false;
  void set(const Rect& r) {
    if (on) list.PopClipRect();
    on = r.w > 0;
    if (on) list.PushClipRect(painter.at({r.x, r.y}), painter.at({r.right(), r.bottom()}), true);
  }
};

}

Colour backdrop(const bench::View& view) { return theme(view.top_bar.night).bench; }

void paint(const std::vector<Shape>& shapes, double px_per_mm) {
  ImDrawList& list = *ImGui::GetBackgroundDrawList();
  const Painter painter{list, px_per_mm};
  Clipper clipper{list, painter};
  for (const Shape& shape : shapes) {
    if (const auto* clip = std::get_if<Clip>(&shape)) {
      clipper.set(clip->rect);
      continue;
    }
    std::visit(
        [&](const auto& s) {
          if constexpr (!std::is_same_v<std::decay_t<decltype(s)>, Clip>) painter(s);
        },
        shape);
  }
  clipper.set({});
}

namespace {

struct Style {
  explicit Style(const Theme& t, float pad_x, float pad_y) {
    const auto colour = [](ImGuiCol what, Colour c) { ImGui::PushStyleColor(what, packed(c)); };
    colour(ImGuiCol_FrameBg, t.slab);
    colour(ImGuiCol_FrameBgHovered, t.slab);
    colour(ImGuiCol_FrameBgActive, t.slab);
    colour(ImGuiCol_Text, t.ink);
    colour(ImGuiCol_TextDisabled, t.quiet);
    colour(ImGuiCol_TextSelectedBg, t.right);
    colour(ImGuiCol_NavHighlight, t.ink);
    ImGui::PushStyleVar(ImGuiStyleVar_FramePadding, {pad_x, pad_y});
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {0, 0});
    ImGui::PushStyleVar(ImGuiStyleVar_WindowMinSize, {1, 1});
    ImGui::PushStyleVar(ImGuiStyleVar_FrameBorderSize, 0.0f);
  }
  ~Style() {
    ImGui::PopStyleVar(4);
    ImGui::PopStyleColor(7);
  }
};

// ImGui draws its own letters and asks nobody for those that it has not.
void ask_for(const std::string& words, double px) {
  for (std::size_t at = 0; at < words.size();)
    letter_of(words::next_letter(words, at), cap::clear, false, px);
}

std::optional<std::string> field(const bench::Pad& pad, const std::string& text, const Theme& t,
                                 double px, words::Sentence meaning, double caption, double above) {
  ImFont* font = font_for(cap::clear, false);
  Rect box = inset(pad.box, 0.9); // within its drawn frame
  box.w -= caption;
  box.y += above;
  box.h -= above;
  const auto w = static_cast<float>(box.w * px), h = static_cast<float>(box.h * px);
  const Style style(t, static_cast<float>(2.1 * px), std::max(0.0f, (h - font->FontSize) / 2));
  ImGui::SetNextWindowPos({static_cast<float>(box.x * px), static_cast<float>(box.y * px)});
  ImGui::SetNextWindowSize({w, h});
  std::array<char, 256> typed{};
  text.copy(typed.data(), typed.size() - 1);
  const std::string id = bench::name_of(pad.id);
  bool changed = false;
  ImGui::PushFont(font);
  if (ImGui::Begin(id.c_str(), nullptr,
                   ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoBackground |
                       ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings)) {
    ImGui::SetNextItemWidth(w);
    changed =
        ImGui::InputTextWithHint("##text", words::say(meaning).c_str(), typed.data(), typed.size());
  }
  ImGui::End();
  ImGui::PopFont();
  ask_for(typed[0] ? typed.data() : words::say(meaning), px);
  if (!changed) return std::nullopt;
  return std::string(typed.data());
}

}

std::vector<bench::Text> fields(const bench::View& view, double px_per_mm) {
  std::vector<bench::Text> out;
  for (const Field& shown : fields_of(view)) {
    const bench::Pad& pad = *bench::pad_of(view.layout, shown.pad);
    const auto text = field(pad, shown.text, theme(view.top_bar.night), px_per_mm, shown.meaning,
                            caption_mm(shown, pad.box), caption_above_mm(shown, pad.box));
    if (text) out.push_back({shown.pad, *text});
  }
  return out;
}

}
