// Notes and z together at one theta, and the z that is likeliest there. For learn*.cpp
// alone, and for the tests of its derivatives.
#pragma once

#include "paint/range/learn_plan.hpp"

#include <Eigen/SparseCholesky>

namespace paint::learning {

struct Joint {
  double value = 0;
  bool turned_up = false; // somewhere a batch's chance is curved upwards
  Eigen::VectorXd gradient;
  Sparse precision; // minus the second derivatives, the lower half
};

// bent: the true curvature. level: where a batch's chance is curved upwards, as that of notes which
// contradict each other is, that counts for so little that the priors outweigh it twice. bounded:
// no batch turns it upwards in any way, for steps from far away.
//
// Laplace's integral is taken with the level one. Where two modes part, the true curvature goes
// through 0 and the integral would be without bound, just there.
enum class Curvature { bent, level, bounded };

class Model {
public:
  Model(const LearnProblem& problem, const LearnPriors& priors);

  const Plan plan;
  const LearnPriors priors;

  // `nodes_at`: the theta that says how many nodes each batch has, so that neighbours have as many.
  // The value is minus infinity where that is too many.
  Joint joint(const Theta& theta, const Theta& nodes_at, const Eigen::VectorXd& z,
              Curvature curvature = Curvature::bent);
  // How half the ln determinant of the precision moves with z, `covariance` being its inverse.
  Eigen::VectorXd determinant_slope(const Theta& theta, const Theta& nodes_at,
                                    const Eigen::VectorXd& z, const Eigen::MatrixXd& covariance);
  Eigen::VectorXd start(const NoteModel& hand) const; // z by the priors, or near its notes
  double ln_prior(const Theta& theta) const;

private:
  bool sum_up(const PlanBatch& batch, const NoteModel& hand, const NoteModel& nodes_at,
              const Eigen::VectorXd& z);                  // false: too many nodes
  bool turn(const PlanBatch& batch, Curvature curvature); // true: it was curved upwards
  void turn_one(const PlanBatch& batch, Curvature curvature);
  void add_batch(Joint& joint, const PlanBatch& batch, Curvature curvature);
  void add_priors(Joint& joint, const NoteModel& hand, const Eigen::VectorXd& z) const;
  void add_walk(Joint& joint, const Eigen::VectorXd& z) const;
  BatchSum sum;
  // Of the batch that was summed up last.
  std::vector<std::vector<double>> shares; // of each segment's demand, by its pigments
  std::vector<double> demands;
  double prior_precision = 0; // of a demand, alpha being given
  Eigen::VectorXd local_slope;
  Eigen::MatrixXd local_bend;
};

// The factors of a precision; usable where every pivot is above 0.
class Factor {
public:
  explicit Factor(const Model& model) { ldlt.analyzePattern(model.plan.pattern); }
  bool take(const Sparse& precision);
  double half_ln_determinant() const { return 0.5 * ldlt.vectorD().array().log().sum(); }
  Eigen::MatrixXd inverse() const {
    return ldlt.solve(Eigen::MatrixXd::Identity(ldlt.rows(), ldlt.rows()));
  }
  Eigen::VectorXd solve(const Eigen::VectorXd& of) const { return ldlt.solve(of); }

private:
  Eigen::SimplicialLDLT<Sparse, Eigen::Lower> ldlt;
};

struct Mode {
  Eigen::VectorXd z;
  Joint joint;
  LearnEnd end = LearnEnd::no_convergence;
};

// Damped Newton from z; `factor` is left with the precision at the mode.
Mode mode_from(Model& model, Factor& factor, const Theta& theta, const Theta& nodes_at,
               const Eigen::VectorXd& z);

}
