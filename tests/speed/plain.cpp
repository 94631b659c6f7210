#include "speed/plain.hpp"

#include <imgui.h>

#include <array>
#include <cmath>
#include <cstdio>

namespace speed {

namespace {

std::array<float, 300> a_curve() {
  std::array<float, 300> curve{};
  for (std::size_t i = 0; i < curve.size(); ++i) curve[i] = std::sin(static_cast<float>(i) / 20);
  return curve;
}

}

void plain_widgets() {
  static const auto curve = a_curve();
  static float amount = 0.4f;
  ImGui::SetNextWindowPos({0, 0});
  ImGui::SetNextWindowSize(ImGui::GetIO().DisplaySize);
  ImGui::Begin("plain", nullptr, ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoSavedSettings);
  for (int i = 0; i < 12; ++i) {
    char label[16];
    std::snprintf(label, sizeof label, "button %d", i);
    if (i % 6 > 0) ImGui::SameLine();
    ImGui::Button(label, {150, 90});
  }
  for (int i = 0; i < 6; ++i) ImGui::Text("A line of text, number %d, of a usual length.", i);
  ImGui::SliderFloat("slider", &amount, 0, 1);
  ImGui::ProgressBar(amount);
  ImGui::PlotLines("curve", curve.data(), static_cast<int>(curve.size()), 0, nullptr, -1, 1,
                   {900, 200});
  ImGui::End();
}

}
