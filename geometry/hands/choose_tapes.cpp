#include "geometry/hands/choose_tapes.h"

#include <algorithm>
#include <array>
#include <bit>
#include <optional>

#include "geometry/hands/fitting_skin.h"
#include "geometry/paths/rough_distances.h"

namespace scalpmark::geometry {

namespace {

constexpr double worth_a_tape = 0.9, shortest_tape_mm = 1;

constexpr std::array each_tape{&ChosenTapes::vertex, &ChosenTapes::nasion, &ChosenTapes::left_tragus,
                               &ChosenTapes::right_tragus};

bool better(const ChosenTapes& a, const std::optional<ChosenTapes>& b, double tighter = 1) {
  return !b || a.places < b->places || (a.places == b->places && a.spread_mm < tighter * b->spread_mm);
}

const FittingPatch& nearest_to(const Eigen::Vector3d& at, const Surface& skin,
                               const std::vector<FittingPatch>& patches) {
  const auto away = [&](const FittingPatch& p) { return (skin.position(p.best) - at).norm(); };
  return *std::min_element(patches.begin(), patches.end(),
                           [&](const FittingPatch& a, const FittingPatch& b) { return away(a) < away(b); });
}

}  // namespace

std::vector<ChosenTapes> choose_tapes(const Head& head, const std::vector<SurfacePoint>& marks,
                                      const FindOptions& options) {
  const Surface& skin = head.skin();
  const SkinFiducials& f = head.fiducials();
  const std::array from{rough_distances(skin, head.vertex()), rough_distances(skin, f.nasion),
                        rough_distances(skin, f.left_tragus), rough_distances(skin, f.right_tragus)};
  const FittingSkin fitting(head, {&from[0], &from[1], &from[2], &from[3]});
  std::vector<ChosenTapes> chosen;
  for (const SurfacePoint& mark : marks) {
    const std::array<double, 4> all_mm = fitting.tapes_to(mark);
    std::optional<ChosenTapes> two, three;
    for (unsigned set = 0; set < 1U << each_tape.size(); ++set) {
      const int count = std::popcount(set);
      if (count != 2 && count != 3) continue;
      ChosenTapes choice;
      FourTapes some_mm;
      bool is_laid = true;
      for (size_t i = 0; i < each_tape.size(); ++i) {
        if ((set >> i & 1U) == 0) continue;
        choice.*each_tape[i] = true;
        some_mm[i] = all_mm[i];
        is_laid = is_laid && all_mm[i] >= shortest_tape_mm;
      }
      if (!is_laid) continue;
      const auto patches = fitting.patches(some_mm, options.reading_mm);
      choice.places = patches.size();
      choice.spread_mm = nearest_to(skin.position(mark), skin, patches).spread_mm;
      std::optional<ChosenTapes>& best = count == 2 ? two : three;
      if (better(choice, best)) best = choice;
    }
    // Of the four points no two are in one place, so that three tapes have a length wherever the mark is.
    chosen.push_back(better(*three, two, worth_a_tape) ? *three : *two);
  }
  return chosen;
}

}  // namespace scalpmark::geometry
