// The likeliest theta: quasi-Newton on the Laplace marginal. Private to learn*.cpp.
#pragma once

#include "paint/range/learn_joint.hpp"

namespace paint::learning {

struct Start {
  Theta theta{};
  Eigen::VectorXd z;
  std::array<Theta, theta_count> covariance{}; // of an earlier result; all 0: none
  std::vector<Theta> z_by_theta;               // likewise; as long as z, or empty
};

struct Summit {
  Theta theta{};
  Mode mode;
  double log_posterior = 0;
  std::array<Theta, theta_count> covariance{};
  std::vector<Theta> z_by_theta;
  LearnEnd end = LearnEnd::no_convergence;

  double by_theta_variance(int at) const; // of z there, from theta's
};

Summit climb(Model& model, Factor& factor, const Start& start);

// Nothing sought: mode and marginal at theta, its covariance 0.
Summit stand(Model& model, Factor& factor, const Theta& theta);

}
