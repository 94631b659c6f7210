// Whether two swatches are the same colour: how far apart, between which limits, what an eye makes
// of it, and which way.
#pragma once

#include "colour/difference.hpp"
#include "colour/reading.hpp"

namespace colour {

// Both on one photo, side by side under one light, is the way that tells most: what the camera did,
// it did to both. On two photos it may have done twice.
enum class Taken { one_photo, two_photos };

// What is commonly said of differences of 0 to 1, to 2, to 3.5, to 5 and above (Mokrzycki and Tatol
// 2011, Colour difference ΔE - a survey, who say it of CIELAB's difference; of CIEDE2000 it is
// common practice).
enum class Seen { not_seen, practised_eye, any_eye, clearly, another_colour };
Seen seen(double difference);

// One of the three ways in which colours differ, of the second against the first, in steps of the
// difference that an eye tells apart.
struct Way {
  double by = 0;
  double sd = 0;
};
// Nine in ten that it is not nothing, and at least half a step.
bool tells(const Way& way);

// Where a hue has turned to. Between red, yellow, green and blue it is named after the one it
// goes towards; a colour that is one of them already, after that one's other neighbour: a blue
// becomes greener or redder. Hardly any hue at all goes warmer or cooler, by blue and yellow alone.
// Unique hues in CIELAB: red 24, yellow 90, green 162, blue 246 degrees (those of CIECAM02, in
// CIELAB; from memory).
enum class Turned { redder, yellower, greener, bluer, warmer, cooler };

struct Match {
  double difference = 0;
  double low = 0, high = 0;   // nine in ten; 0 where they may be the same
  Way lightness, chroma, hue; // above 0: lighter, stronger, turned on from red to yellow to green
  Turned turned = Turned::warmer;                                  // which way the hue went
  Turned turned_on = Turned::warmer, turned_back = Turned::cooler; // if it had, by more or less
};

// Limits hold the true difference nine times in ten whatever it is, 0 among it: those differences
// at which what was read would be neither among the lowest nor the highest twentieth (Neyman's
// construction). The square of what is read is taken to be as a chi-square of the same mean and
// variance (Patnaik 1949, The non-central chi-square and F distributions and their applications).
// The upper limit is never lower than it would be had two of the same colour been read half as far
// apart as they are on average: two that happen to be read alike are not surer for it. (Simulated
// with two and with three fifths in place of a half the limits hold the truth 88 times in a hundred
// or more, whatever it is.) `doubt` multiplies what is not known between two photos, see
// colour/kept.hpp.
Match match(const Reading& one, const Reading& other, Taken taken, double doubt = 1);

// The square of how far apart two readings of one paint are, against what is not known of it: three
// on average, where what is said of it is true.
double surprise(const Reading& one, const Reading& other);

}
