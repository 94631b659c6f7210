#include "paint/flow_scale.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace paint {

double FlowScale::x(double f) const {
  const double share = std::log(std::max(f, 1e-6) / low) / std::log(high / low);
  return left + (right - left) * share;
}

double FlowScale::flow(double at) const {
  return low * std::pow(high / low, (at - left) / (right - left));
}

FlowScale flow_scale(const std::optional<Band>& band, const std::vector<double>& shown, double left,
                     double right) {
  double low = 0.8, high = 6, middle = 2.2; // where most paints lie, while no band is known
  if (band) {
    middle = std::exp(band->middle);
    low = middle / 2.6;
    high = middle * 2;
  }
  for (const double flow : shown) {
    if (!std::isfinite(flow) || flow <= 0) continue;
    low = std::min(low, std::max(flow / 1.12, middle / 25));
    high = std::max(high, std::min(flow * 1.12, middle * 6));
  }
  return {low, high, left, right};
}

namespace {

std::string tick_label(double flow) {
  const double tenths = flow * 10;
  const bool whole = std::abs(flow - std::round(flow)) < 1e-9;
  const bool one_digit = std::abs(tenths - std::round(tenths)) < 1e-9;
  return words::number(flow, whole ? 0 : one_digit ? 1 : 2);
}

std::vector<Tick> ticks_of(const FlowScale& scale, const std::vector<double>& leads) {
  std::vector<Tick> out;
  const int from = static_cast<int>(std::floor(std::log10(scale.low)));
  const int to = static_cast<int>(std::ceil(std::log10(scale.high)));
  for (int power = from; power <= to; ++power)
    for (const double lead : leads) {
      const double flow = lead * std::pow(10.0, power);
      if (flow >= scale.low * 0.999 && flow <= scale.high * 1.001)
        out.push_back({flow, tick_label(flow)});
    }
  return out;
}

}

std::vector<Tick> ticks(const FlowScale& scale,
                        const std::function<double(std::string_view)>& width, double gap) {
  const auto apart = [&](const std::vector<Tick>& all) {
    double end = -1e9;
    for (const Tick& tick : all) {
      const double half = width(tick.label) / 2, x = scale.x(tick.flow);
      if (x - half < end + gap) return false;
      end = x + half;
    }
    return true;
  };
  const std::array<std::vector<double>, 5> choices{
      {{1, 1.5, 2, 3, 4, 5, 6, 8}, {1, 1.5, 2, 3, 4, 6}, {1, 2, 3, 5}, {1, 3}, {1}}};
  std::vector<Tick> out;
  for (const auto& leads : choices) {
    out = ticks_of(scale, leads);
    if (apart(out)) return out;
  }
  return out;
}

std::pair<double, double> band_edges(const Band& band) {
  return {std::exp(band.from), std::exp(band.to)};
}

}
