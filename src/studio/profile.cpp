#include "studio/profile.hpp"

#include <lcms2.h>

#include <cmath>
#include <memory>
#include <optional>

namespace studio {

namespace {

struct Close {
  void operator()(void* profile) const { cmsCloseProfile(profile); }
};
using Profile = std::unique_ptr<void, Close>;

constexpr cmsTagSignature colourants[] = {cmsSigRedColorantTag, cmsSigGreenColorantTag,
                                          cmsSigBlueColorantTag};
constexpr cmsTagSignature curves[] = {cmsSigRedTRCTag, cmsSigGreenTRCTag, cmsSigBlueTRCTag};

// A profile may say anything; of one that could be of a photo, white is white and brighter is
// brighter.
bool plausible(const colour::Encoding& encoding) {
  const colour::Three white = colour::times(encoding.to_xyz_d50, {1, 1, 1});
  for (std::size_t i = 0; i < 3; ++i) {
    if (!(std::abs(white[i] - colour::d50[i]) < 0.1)) return false;
    const auto& curve = encoding.linear[i];
    for (std::size_t k = 0; k < 256; ++k)
      if (!std::isfinite(curve[k]) || (k > 0 && curve[k] < curve[k - 1])) return false;
    if (!(curve[0] > -0.01F && curve[0] < 0.1F && std::abs(curve[255] - 1) < 0.1F)) return false;
  }
  return true;
}

std::optional<colour::Encoding> encoding_of(cmsHPROFILE profile) {
  colour::Encoding out;
  for (std::size_t i = 0; i < 3; ++i) {
    const auto* xyz = static_cast<const cmsCIEXYZ*>(cmsReadTag(profile, colourants[i]));
    const auto* curve = static_cast<const cmsToneCurve*>(cmsReadTag(profile, curves[i]));
    if (!xyz || !curve) return std::nullopt;
    out.to_xyz_d50[0][i] = xyz->X;
    out.to_xyz_d50[1][i] = xyz->Y;
    out.to_xyz_d50[2][i] = xyz->Z;
    for (std::size_t k = 0; k < 256; ++k)
      out.linear[i][k] = cmsEvalToneCurveFloat(curve, static_cast<float>(k) / 255);
  }
  return plausible(out) ? std::optional(out) : std::nullopt;
}

bool make_srgb(cmsHPROFILE profile, colour::Photo& photo) {
  const Profile srgb(cmsCreate_sRGBProfile());
  const cmsHTRANSFORM change = cmsCreateTransform(profile, TYPE_RGB_8, srgb.get(), TYPE_RGB_8,
                                                  INTENT_RELATIVE_COLORIMETRIC, 0);
  if (!change) return false;
  cmsDoTransform(change, photo.rgb.data(), photo.rgb.data(),
                 static_cast<cmsUInt32Number>(photo.rgb.size() / 3));
  cmsDeleteTransform(change);
  return true;
}

}

bool take_profile(std::string_view bytes, colour::Photo& photo) {
  const Profile profile(
      cmsOpenProfileFromMem(bytes.data(), static_cast<cmsUInt32Number>(bytes.size())));
  if (!profile || cmsGetColorSpace(profile.get()) != cmsSigRgbData) return false;
  const bool tables =
      cmsIsTag(profile.get(), cmsSigAToB0Tag) || cmsIsTag(profile.get(), cmsSigAToB1Tag);
  if (tables || !cmsIsMatrixShaper(profile.get())) return make_srgb(profile.get(), photo);
  const auto encoding = encoding_of(profile.get());
  if (encoding) photo.encoding = *encoding;
  return encoding.has_value();
}

}
