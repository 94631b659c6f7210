// The dry film: how much of it is pigment, what water its binder keeps, and whether it stays
// sticky. With gum binders good paint often stands at a PVC above its CPVC: no verdict may be drawn
// from the two alone, here or anywhere.
#pragma once

#include "paint/air.hpp"
#include "paint/amount.hpp"
#include "paint/material.hpp"
#include "paint/water_activity.hpp"
#include "words/say.hpp"

namespace paint {

struct PigmentMass {
  Pigment pigment;
  double grams = 0;
};

// Critical pigment volume concentration, 0 to 1: 1 / (1 + OA rho / 93.5), OA in g of linseed oil to
// 100 g, 93.5 g = 100 mL of that oil (Asbeck & Van Loo, Ind. Eng. Chem. 41 (1949) 1470). For a
// pigment that does not flocculate in oil; in gum water an index to compare pigments by, +-20 %.
// Blends: the blend's mean OA (by mass) and density in the same formula. Packing of fine between
// coarse is left out, so the true value may be higher.
// Errors: not_a_number, negative_amount; density_not_known, oil_absorption_not_known;
// no_pigment_there where nothing weighs anything.
words::Result<double> cpvc(const std::vector<PigmentMass>& by_mass);

// What is left when a paint has dried in a room, in mL, without any air between.
struct Film {
  double pigment_mL = 0;
  double binder_mL = 0;    // gum, glycerin, honey and the water they keep there
  double held_water_g = 0; // that water
};

// Gum as sold is 1.40 g/mL with its 12 % of moisture (1.35 to 1.49, supplier data sheets): that
// moisture is part of the held water and not counted twice. The other volumes as mL_per_g has them.
// Only what `wet` holds of gum, glycerin and honey counts, not its water or volume.
// Errors: not_a_number, negative_amount; nothing_to_dry; those of held_water_g (humidity above
// 0.98).
words::Result<Film> film_of(double pigment_mL, const Wet& wet, const Room& room);

// Pigment volume concentration, 0 to 1. Errors: not_a_number, negative_amount, nothing_to_dry.
words::Result<double> pvc(const Film& film);
// With what is not known of the masses, of the pigment's density, and of the room's air, whose
// humidity is off by so much: first order, by differences. Errors likewise, and film_of's.
words::Result<Amount> pvc(const Amount& pigment_mL, const Amount& gum_g, const Amount& glycerin_g,
                          const Amount& honey_g, const Room& room, double humidity_u);

// Tack index, our own: (water held at the room's humidity + 0.6 glycerin + 0.2 honey solids) to
// 1 g of dry gum, weights after a Fox-type estimate of how far each softens gum. Films without
// pigment stand at 0.13 to 0.15 (gum alone, brittle), 0.30 to 0.34 (20 g glycerin to 100 g of gum,
// good) and 0.47 to 0.53 (40 g, too tacky): the films in words from a paper on a gum like this one,
// at 50 to 57 % humidity, which is assumed. Errors: no_gum_there, and those of held_water_g.
words::Result<double> tack_index(const Wet& wet, const Room& room);
// With what is not known of gum, glycerin and honey (their moisture above all): first order, by
// differences. Errors likewise.
words::Result<Amount> tack_index(const Amount& gum_g, const Amount& glycerin_g,
                                 const Amount& honey_g, const Room& room);

// Where sticky begins, as a distribution: ln of the index is normal(ln_middle, ln_u), and one
// verdict strays from it by ln_noise more. As it stands, our own starting point for paint: chance
// of sticky 16 % at an index of 0.5 and 84 % at 0.8.
struct TackMark {
  double ln_middle = -0.458145; // ln sqrt(0.5 * 0.8)
  double ln_u = 0.2;
  double ln_noise = 0.1234;
  int verdicts = 0;

  bool operator==(const TackMark&) const = default;
};

double caution_mark(const TackMark& mark); // 0.5 as it stands
double warning_mark(const TackMark& mark); // 0.8

enum class Tack { dries, may_stay_sticky, stays_sticky };
words::Sentence say_of(Tack tack); // sentences that call it our own estimate

// Index 0 to 100, with a chance of sticky below 16 %, above 84 %, or between. Errors: not_a_number,
// negative_amount, amount_too_large; tack_mark_unusable.
words::Result<Tack> tack(double index, const TackMark& mark = {});
words::Result<Tack> tack(const Amount& index, const TackMark& mark = {});

// The mark after a verdict on dry paint of that index: mean and variance of the normal distribution
// that the verdict leaves of it (moments of a normal times a probit). Sticky moves the mark down,
// good up; a verdict that was to be expected moves it hardly. Index above 0 to 100.
// Errors: as tack, measure_not_positive for no index.
words::Result<TackMark> updated(const TackMark& mark, double index, bool sticky);

}
