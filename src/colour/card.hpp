// The swatch card that is printed and painted on: where things lie on it, and where it lies on a
// photo.
#pragma once

#include "colour/fields.hpp"

#include <vector>

namespace colour {

struct Place { // in mm from the card's upper left corner
  double x = 0, y = 0, w = 0, h = 0;
};

// Greys as they are sent to the printer, sRGB values 0 to 255, all three alike.
inline constexpr int dark_grey = 119, light_grey = 187;

struct CardPlaces {
  double w = 92, h = 62; // of the card
  Place paint{5, 19, 54, 32};
  Place white{64, 19, 10, 10}, light{64, 30, 10, 10}, dark{64, 41, 10, 10};
  double scale_y = 56, scale_mm = 50; // begins where the field for the paint does
};
inline constexpr CardPlaces card_places{};

struct Spot {
  double x = 0, y = 0;
};

struct CardOnPhoto {     // in fields of the photo
  Spot corner;           // the card's upper left one
  Spot right{}, down{};  // a millimetre of the card
  double fields_mm2 = 0; // fields to a square millimetre
};

Spot on_photo(const CardOnPhoto& card, Spot mm);
Spot on_card(const CardOnPhoto& card, Spot field);

// By their two greys: small squares without a hue, of one size, the darker one as far below the
// lighter as on the card, bare paper above both, and the field for the paint on the photo. A
// printer may make both a third lighter or darker. `looks` is of each field, beside the paper;
// `mirrored`, where the fields are of a photo that its file has mirrored.
std::vector<CardOnPhoto> find_cards(const Fields& fields, const std::vector<Lab>& looks,
                                    bool mirrored);

}
