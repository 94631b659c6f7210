// The dry film against handbook formulas, published pigments and films.
#include "paint/film.hpp"

#include "published/row.hpp"
#include "turned_round.hpp"

#include <doctest/doctest.h>

namespace film_test {

using namespace paint;
using namespace published;

namespace {

Pigment pigment(double g_per_mL, double oil) { return {g_per_mL, 0, oil}; }

const Pigment rutile = pigment(4.2, 20), viridian = pigment(3.2, 55),
              cobalt_zinc = pigment(4.49, 55);

}

TEST_CASE("CPVC of pigments whose oil absorption and density are published") {
  const auto row = [](const Pigment& p, double expected, const std::string& at) {
    check({"film/cpvc", "CPVC of one pigment",
           apart("1 / (1 + OA rho / 93.5) as stevenabbott.co.uk/practical-coatings prints it, by "
                 "hand; OA and rho from a coatings journal (Lewarchik 2014) and data sheets"),
           expected, *turned_round::cpvc(p), 5e-5, "half of the last figure", at});
  };
  row(rutile, 0.5268, "rutile, OA 20, 4.2 g/mL");
  row(viridian, 0.3469, "viridian, OA 55, 3.2 g/mL");
  row(cobalt_zinc, 0.2746, "PB72, OA 55, 4.49 g/mL");
}

TEST_CASE("half and half by volume") {
  const Source patton =
      remembered("Patton, Paint Flow and Pigment Dispersion (1979); worked by hand");
  check({"film/cpvc", "CPVC of rutile and viridian, half each by volume", patton, 0.41834,
         *cpvc({{rutile, 4.2}, {viridian, 3.2}}), 5e-6, "half of the last figure"});
}

TEST_CASE("PVC of a house paint") {
  const Source desk = apart("their definitions, helpdesk-paints-coatings.com 2010/07, by hand");
  check({"film/pvc", "PVC of 20 mL of pigment and 30 mL of binder", desk, 0.40, *pvc({20, 30, 0}),
         1e-12, "exact"});
}

TEST_CASE("a film of gum alone is as dense as gum is sold") {
  const Film film = *film_of(0, {.gum_g = 1}, {25, 0.5});
  check({"film/film_of", "density of a gum film at 50 % humidity, g/mL",
         printed("gum arabic, 1.35 to 1.49 (sciencemadness.org, Gum arabic)"), 1.42,
         (1 + film.held_water_g) / film.binder_mL, 0.07, "the printed range"});
}

TEST_CASE("films of a gum like this one: brittle, satisfactory, too tacky") {
  // A paper on brea gum has it in words, for 0, 20 and 40 g of glycerin to 100 g of gum; humidity
  // is not given: 50 to 57 % assumed. Words make no row; they must not be contradicted.
  const auto index = [&](double glycerin, double humidity) {
    return *tack_index({.gum_g = 100, .glycerin_g = glycerin}, {25, humidity});
  };
  CHECK(tack(index(0, 0.57)) == Tack::dries);
  CHECK(tack(index(20, 0.57)) == Tack::dries);
  CHECK(tack(index(40, 0.57)) != Tack::dries);
}

TEST_CASE("a verdict without noise leaves half of a normal distribution") {
  const TackMark after = *updated({0, 1, 0, 0}, 1, false);
  const Source half = library("scipy 1.10.1, stats.halfnorm");
  check({"film/updated", "mean of the mark after a good verdict at its middle", half, 0.7978846,
         after.ln_middle, 1e-6, "digits written here"});
  check({"film/updated", "sd of the mark after that verdict", half, 0.6028103, after.ln_u, 1e-6,
         "digits written here"});
}

}
