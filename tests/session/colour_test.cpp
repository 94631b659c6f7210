// One colour for a batch.
#include "make.hpp"

#include <doctest/doctest.h>

namespace colour_test {

using namespace session;

namespace {

constexpr const char* batch = "7f3a91c2";
constexpr std::uint32_t blue = 0x2244AA, ochre = 0xC8922A, red = 0x993322;

Card coloured(const char* id, double g_per_mL, std::uint32_t colour) {
  Card card = make::pigment(id, g_per_mL, 30);
  std::get<PigmentCard>(card.facts).colour = colour;
  return card;
}

// Laid out in this order, none of them in the order of their ids.
struct Blend {
  make::Writer w;
  Blend() {
    w.put(batch, Opened{"Blend"});
    w.put(batch, LaidOut{coloured("m", 2, blue)});
    w.put(batch, LaidOut{coloured("z", 4, ochre)});
    w.put(batch, LaidOut{coloured("a", 4, red)});
  }
  std::uint32_t colour() { return colour_of(make::folded({w.log}, batch)); }
};

}

TEST_CASE("a batch has the colour of the pigment that fills most of it") {
  Blend b;
  CHECK(b.colour() == blue); // none weighed yet: laid out first
  b.w.put(batch, Added{"a", Unit::g, 3, ""});
  CHECK(b.colour() == red);
  b.w.put(batch, Added{"z", Unit::g, 4, ""});
  CHECK(b.colour() == ochre);
  const Ref most = b.w.put(batch, Added{"m", Unit::g, 2.5, ""}); // lighter, but more of it
  CHECK(b.colour() == blue);
  b.w.put(batch, Corrected{most, Corrected::Says{Added{"m", Unit::g, 2, ""}}, {}});
  CHECK(b.colour() == blue); // as much as of ochre: laid out first
  b.w.put(batch, Withdrawn{most});
  CHECK(b.colour() == ochre);
}

TEST_CASE("paint of another batch counts by the pigment in it") {
  Blend b;
  Card paint = make::paint_of("p", 3);
  std::get<PaintCard>(paint.facts).as_one.colour = 0x111111;
  b.w.put(batch, LaidOut{paint});
  b.w.put(batch, Added{"m", Unit::g, 1, ""});    // 0.5 mL
  b.w.put(batch, Added{"p", Unit::g, 4.05, ""}); // 0.3 of it pigment: 0.5 mL less a little
  CHECK(b.colour() == blue);
  b.w.put(batch, Added{"p", Unit::g, 4.05, ""});
  CHECK(b.colour() == 0x111111);
}

TEST_CASE("a swatch that was read is the colour of its paint, until it is withdrawn") {
  Blend b;
  b.w.put(batch, Added{"a", Unit::g, 3, ""});
  const auto photo = [](char digit, std::optional<Measured> read) {
    return Photo{std::string(64, digit), "jpg", PhotoOf::swatch, read};
  };
  b.w.put(batch, photo('1', {}));
  CHECK(b.colour() == red); // kept, never read
  b.w.put(batch, photo('2', Measured{0x2E4F9A, 35, 8, -42, 0.6, 0.9, 1.1}));
  CHECK(b.colour() == 0x2E4F9A);
  const Ref last = b.w.put(batch, photo('3', Measured{0x30519C, 36, 8, -42, 0.6, 0.9, 1.1}));
  CHECK(b.colour() == 0x30519C);
  b.w.put(batch, photo('4', {}));
  b.w.put(batch, Added{"m", Unit::g, 30, ""});
  CHECK(b.colour() == 0x30519C); // a later photo was not read, and the paint is what it looks like
  b.w.put(batch, Withdrawn{last});
  CHECK(b.colour() == 0x2E4F9A);
}

}
