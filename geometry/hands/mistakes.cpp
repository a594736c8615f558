#include "geometry/hands/mistakes.h"

#include <algorithm>
#include <array>

#include "geometry/base/angles.h"
#include "geometry/base/error.h"
#include "geometry/hands/after_search.h"
#include "geometry/head/landmarks.h"
#include "geometry/head/vertex.h"
#include "geometry/paths/shortest_path.h"
#include "geometry/plan/settings.h"
#include "geometry/plan/treatment.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

/// All that is wrong, each kind once: two of a kind add up.
struct AllWrong {
  VertexOff vertex;
  bool has_vertex = false;
  std::array<double, 4> misread_mm{};  ///< by Misread
  std::optional<CapMove> cap;
  std::optional<MarkRule> laid_by;
  std::optional<double> turned_deg, turned_in_place_deg;
  std::optional<LookedAside> look;
  std::optional<StandsOff> off;

  void add(const VertexOff& m) {
    has_vertex = true;
    vertex.forward_mm += m.forward_mm;
    vertex.right_mm += m.right_mm;
  }
  void add(const TapeMisread& m) { misread_mm.at(static_cast<size_t>(m.which)) += m.by_mm; }
  void add(const CoilTurned& m) {
    auto& sum = m.about_centre ? turned_in_place_deg : turned_deg;
    sum = sum.value_or(0) + m.by_deg;
  }
  void add(const OtherRule& m) {
    if (laid_by && *laid_by != m.laid_by)
      throw GeometryError(
          Message::of("A coil is laid by one rule; choose another mistake beside the first rule."));
    laid_by = m.laid_by;
  }
  void add(const CapSlipped& m) {
    if (!cap) cap = CapMove{};
    cap->forward_mm += m.move.forward_mm;
    cap->right_mm += m.move.right_mm;
    cap->turn_right_deg += m.move.turn_right_deg;
  }
  void add(const LookedAside& m) {
    if (!look) look = LookedAside{};
    look->front_deg += m.front_deg;
    look->right_deg += m.right_deg;
  }
  void add(const StandsOff& m) {
    if (!off) off = StandsOff{};
    off->gap_mm += m.gap_mm;
    off->tilt.roll_deg += m.tilt.roll_deg;
    off->tilt.pitch_deg += m.tilt.pitch_deg;
  }
  [[nodiscard]] double misread(Misread which) const { return misread_mm.at(static_cast<size_t>(which)); }
  [[nodiscard]] bool start_is_off() const {
    return has_vertex || misread(Misread::lateral) != 0 || misread(Misread::anterior) != 0;
  }
};

AllWrong all_wrong(const std::vector<Mistake>& mistakes) {
  AllWrong all;
  for (const Mistake& mistake : mistakes) std::visit([&](const auto& m) { all.add(m); }, mistake);
  return all;
}

WhatIf start_with(const Head& head, const Case& the_case, const Plan& plan, const AllWrong& wrong) {
  Case misled = the_case;
  misled.search.lateral_mm += wrong.misread(Misread::lateral);
  misled.search.anterior_mm += wrong.misread(Misread::anterior);
  check_settings(misled);
  WhatIf w = if_vertex_off(head, misled, plan, wrong.vertex.forward_mm, wrong.vertex.right_mm);
  if (!wrong.has_vertex) w.vertex.reset();
  return w;
}

/// The position that the case's site is, constructed over a vertex that is marked elsewhere.
SurfacePoint landmark_over(const Head& head, const std::string& label, const Vector3d& marked_vertex) {
  const Surface& skin = head.skin();
  const SkinFiducials& f = head.fiducials();
  const SurfacePoint vertex = skin.closest(marked_vertex);
  const VertexTapes tapes{vertex, Tape::over(skin, f.nasion, vertex, f.inion),
                          Tape::over(skin, f.left_tragus, vertex, f.right_tragus)};
  return landmark(skin, tapes, label,
                  [](const std::string&, const Tape& tape, double share) { return tape.at(share); })
      ->on_skin;
}

/// A case and a plan whose treatment are what the mistakes so far have made of them.
class Misled {
public:
  Misled(const Head& head, const Case& the_case, const Plan& plan, const AllWrong& wrong)
      : head_(head), case_(the_case), plan_(plan), wrong_(wrong) {
    told_.meant = plan.treatment.pulse;
    told_.really = plan.treatment;
  }

  WhatIf told() {
    find_site();
    draw_edge();
    lay();
    hold();
    const Surface& skin = head_.skin();
    told_.off_mm =
        shortest_distances(skin, skin.closest(told_.meant), {skin.closest(told_.really.pulse)}).front();
    return std::move(told_);
  }

private:
  void find_site() {
    const double misread_mm = wrong_.misread(Misread::treatment);
    if (misread_mm != 0) {
      if (case_.treatment.rule != TreatmentRule::forward)
        (void)if_misread(head_, case_, plan_, Misread::treatment, misread_mm);  // refuses
      case_.treatment.distance_mm += misread_mm;
      check_settings(case_);
    }
    if (!wrong_.start_is_off() && misread_mm == 0) return;
    const Surface& skin = head_.skin();
    Vector3d hotspot = plan_.hotspot.pulse;
    if (wrong_.start_is_off()) {
      const WhatIf start = start_with(head_, case_, plan_, wrong_);
      told_.vertex = start.vertex;
      hotspot = after_search(plan_, start.really).hotspot;
    }
    if (case_.treatment.rule == TreatmentRule::forward)
      went(lay_treatment(head_, case_, skin.closest(hotspot), TapeDistances::left_out).coil.placement);
    else if (told_.vertex)
      went(lay_on_site(head_, case_, treatment_side(case_),
                       landmark_over(head_, case_.treatment.label, *told_.vertex), TapeDistances::left_out)
               .placement);
  }

  /// The edge mark too far out, and the site mark where it was.
  void draw_edge() {
    const double misread_mm = wrong_.misread(Misread::centre_to_edge);
    if (misread_mm == 0) return;
    const Vector3d site = plan_.treatment.wanted;
    went(if_misread(head_, case_, plan_, Misread::centre_to_edge, misread_mm).really);
    plan_.treatment.wanted = site;
  }

  void lay() {
    if (wrong_.cap) {
      const double before_deg = plan_.treatment.angle_deg;
      went(if_cap_slipped(head_, case_, plan_, *wrong_.cap).really);
      turn_case(plan_.treatment.angle_deg - before_deg);
    }
    if (wrong_.laid_by) {
      went(if_rule_changed(head_, case_, plan_, *wrong_.laid_by).really);
      case_.coil.laid_by = *wrong_.laid_by;
    }
    if (wrong_.turned_deg) {
      went(if_coil_turned(head_, case_, plan_, *wrong_.turned_deg).really);
      turn_case(*wrong_.turned_deg);
    }
    if (wrong_.look) {
      WhatIf w = if_looked_aside(head_, case_, plan_, wrong_.look->front_deg, wrong_.look->right_deg);
      told_.sight = w.sight;
      went(std::move(w.really));
    }
  }

  void hold() {
    if (wrong_.turned_in_place_deg)
      went(if_turned_in_place(head_, case_, plan_, *wrong_.turned_in_place_deg).really);
    if (wrong_.off) went(if_standing_off(head_, case_, plan_, wrong_.off->gap_mm, wrong_.off->tilt).really);
  }

  void turn_case(double by_deg) { case_.coil.angle_deg = wrapped_deg(case_.coil.angle_deg + by_deg); }
  void went(Placement there) {
    told_.really = there;
    plan_.treatment = std::move(there);
  }

  const Head& head_;
  Case case_;
  Plan plan_;
  const AllWrong& wrong_;
  WhatIf told_;
};

}  // namespace

bool is_before_search(const Mistake& mistake) {
  if (std::holds_alternative<VertexOff>(mistake)) return true;
  const auto* tape = std::get_if<TapeMisread>(&mistake);
  return tape != nullptr && (tape->which == Misread::lateral || tape->which == Misread::anterior);
}

WhatIf if_made(const Head& head, const Case& the_case, const Plan& plan, const Mistake& mistake) {
  struct Alone {
    const Head& head;
    const Case& the_case;
    const Plan& plan;
    WhatIf operator()(const VertexOff& m) const {
      return if_vertex_off(head, the_case, plan, m.forward_mm, m.right_mm);
    }
    WhatIf operator()(const TapeMisread& m) const {
      return if_misread(head, the_case, plan, m.which, m.by_mm);
    }
    WhatIf operator()(const CoilTurned& m) const {
      return m.about_centre ? if_turned_in_place(head, the_case, plan, m.by_deg)
                            : if_coil_turned(head, the_case, plan, m.by_deg);
    }
    WhatIf operator()(const OtherRule& m) const { return if_rule_changed(head, the_case, plan, m.laid_by); }
    WhatIf operator()(const CapSlipped& m) const { return if_cap_slipped(head, the_case, plan, m.move); }
    WhatIf operator()(const LookedAside& m) const {
      return if_looked_aside(head, the_case, plan, m.front_deg, m.right_deg);
    }
    WhatIf operator()(const StandsOff& m) const {
      return if_standing_off(head, the_case, plan, m.gap_mm, m.tilt);
    }
  };
  return std::visit(Alone{head, the_case, plan}, mistake);
}

WhatIf if_made(const Head& head, const Case& the_case, const Plan& plan,
               const std::vector<Mistake>& mistakes) {
  if (mistakes.size() == 1) return if_made(head, the_case, plan, mistakes.front());
  if (!mistakes.empty() && std::all_of(mistakes.begin(), mistakes.end(), is_before_search))
    return start_with(head, the_case, plan, all_wrong(mistakes));
  return if_made_at_site(head, the_case, plan, mistakes);
}

WhatIf if_made_at_site(const Head& head, const Case& the_case, const Plan& plan,
                       const std::vector<Mistake>& mistakes) {
  if (mistakes.size() == 1 && !is_before_search(mistakes.front()))
    return if_made(head, the_case, plan, mistakes.front());
  return Misled(head, the_case, plan, all_wrong(mistakes)).told();
}

}  // namespace scalpmark::geometry
