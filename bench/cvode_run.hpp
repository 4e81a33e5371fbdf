#pragma once
// The same right-hand side carried by a general-purpose solver: CVODE of SUNDIALS, BDF with a dense Jacobian by
// differences. Switches are found by its root finder and moved by the same status pass; corners of a speed trace are
// stop times, as the own integrator has them.
#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <stdexcept>
#include <string>
#include <vector>

#include "duty/rhs.hpp"

namespace sw::bench {

/// Error of a step: relative, and absolute in units of each state's scale.
struct Tolerance {
  double relative, absolute;
};

class CvodeRun {
 public:
  CvodeRun(Rhs& rhs, const Course& course, Tolerance tolerance) : rhs_(rhs), course_(course) {
    const auto n = static_cast<sunindextype>(rhs.size());
    check(SUNContext_Create(nullptr, &context_), "SUNContext_Create");
    y_ = N_VNew_Serial(n, context_);
    atol_ = N_VNew_Serial(n, context_);
    rates_.resize(rhs.size());
    for (std::size_t i = 0; i < rhs.size(); ++i)
      N_VGetArrayPointer(atol_)[i] = tolerance.absolute * rhs.state(i).info->scale;
    rhs.get(N_VGetArrayPointer(y_));
    matrix_ = SUNDenseMatrix(n, n, context_);
    solver_ = SUNLinSol_Dense(y_, matrix_, context_);
    cvode_ = CVodeCreate(CV_BDF, context_);
    check(CVodeInit(cvode_, rates_of, 0.0, y_), "CVodeInit");
    check(CVodeSVtolerances(cvode_, tolerance.relative, atol_), "CVodeSVtolerances");
    check(CVodeSetUserData(cvode_, this), "CVodeSetUserData");
    check(CVodeSetLinearSolver(cvode_, solver_, matrix_), "CVodeSetLinearSolver");
    check(CVodeRootInit(cvode_, 1, guard_of), "CVodeRootInit");
    CVodeSetNoInactiveRootWarn(cvode_);
    CVodeSetMaxNumSteps(cvode_, 1000000);
  }
  ~CvodeRun() {
    CVodeFree(&cvode_);
    SUNLinSolFree(solver_);
    SUNMatDestroy(matrix_);
    N_VDestroy(atol_);
    N_VDestroy(y_);
    SUNContext_Free(&context_);
  }
  CvodeRun(const CvodeRun&) = delete;
  CvodeRun& operator=(const CvodeRun&) = delete;

  /// Runs the whole course; calls `at` at each of the rising `times` (s), the ports standing in rhs.values().
  void run(const std::vector<double>& times, const std::function<void(std::size_t)>& at) {
    rhs_(0.0, y(), rates_.data());
    settle(0.0);
    std::size_t next = 0, corner = 0;
    for (double from = 0; from < course_.duration;) {
      while (corner < course_.time.size() && course_.time[corner] <= from + 1e-9) ++corner;
      const double to =
          corner < course_.time.size() ? std::min(course_.time[corner], course_.duration) : course_.duration;
      piece(from, to, times, next, at);
      from = to;
    }
  }
  long steps() const { return steps_ + counter(CVodeGetNumSteps); }
  long events() const { return events_; }

 private:
  /// The root finder may stop exactly where a guard is zero; the switch moves only where it is above.
  static constexpr double beyond = 1e-9;

  static void check(int flag, const char* what) {
    if (flag < 0) throw std::runtime_error(std::string(what) + " returned " + std::to_string(flag));
  }
  long counter(int (*get)(void*, long*)) const {
    long n = 0;
    get(cvode_, &n);
    return n;
  }
  double* y() { return N_VGetArrayPointer(y_); }
  /// At a corner both neighbours meet; each piece sees its own side.
  double inside(double t) const { return std::clamp(t, from_ + 1e-9, to_ - 1e-9); }

  static int rates_of(double t, N_Vector y, N_Vector rates, void* self) {
    auto& me = *static_cast<CvodeRun*>(self);
    me.rhs_(me.inside(t), N_VGetArrayPointer(y), N_VGetArrayPointer(rates));
    return 0;
  }
  static int guard_of(double t, N_Vector y, double* guard, void* self) {
    auto& me = *static_cast<CvodeRun*>(self);
    me.rhs_(me.inside(t), N_VGetArrayPointer(y), me.rates_.data());
    *guard = me.rhs_.guard() - beyond;
    return 0;
  }

  void restart(double t) {
    steps_ += counter(CVodeGetNumSteps);
    check(CVodeReInit(cvode_, t, y_), "CVodeReInit");
  }
  void settle(double t) {
    if (rhs_.settle(inside(t), y(), rates_.data()) < 0) throw std::runtime_error("switches do not settle");
  }

  void piece(double from, double to, const std::vector<double>& times, std::size_t& next,
             const std::function<void(std::size_t)>& at) {
    from_ = from;
    to_ = to;
    restart(from);
    check(CVodeSetStopTime(cvode_, to), "CVodeSetStopTime");
    for (double t = from; t < to;) {
      const double goal = next < times.size() && times[next] < to ? times[next] : to;
      const int flag = goal > t ? CVode(cvode_, goal, y_, &t, CV_NORMAL) : CV_SUCCESS;
      check(flag, "CVode");
      if (flag == CV_ROOT_RETURN) {
        rhs_(inside(t), y(), rates_.data());
        settle(t);
        ++events_;
        restart(t);
        check(CVodeSetStopTime(cvode_, to), "CVodeSetStopTime");
      }
      for (; next < times.size() && times[next] <= t; ++next) {
        rhs_(inside(t), y(), rates_.data());
        at(next);
      }
    }
  }

  Rhs& rhs_;
  const Course& course_;
  SUNContext context_ = nullptr;
  void* cvode_ = nullptr;
  N_Vector y_ = nullptr, atol_ = nullptr;
  SUNMatrix matrix_ = nullptr;
  SUNLinearSolver solver_ = nullptr;
  std::vector<double> rates_;
  double from_ = 0, to_ = 0;
  long steps_ = 0, events_ = 0;
};

}  // namespace sw::bench
