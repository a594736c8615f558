#include "viewer/teach/explained.h"

#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

constexpr double skin_over_brain = 0.4;  // still a head, with the brain in it
constexpr double above_coil_mm = 24, beside_coil_mm = 40, name_line_mm = 30;

/// A short line from a place to where its name stands.
Note named(const Eigen::Vector3d& from, const Eigen::Vector3d& way, const std::string& name) {
  Note note;
  note.line = {from, from + 0.5 * way, from + way};
  note.role = Role::construction;
  note.text = name;
  return note;
}

}  // namespace

Shown explained(const geometry::Plan& plan, const std::shared_ptr<const geometry::Cortex>& brain) {
  Shown shown;
  shown.things = {Thing::skin, Thing::treatment, Thing::coil};
  if (brain) {
    shown.things.insert(Thing::cortex);
    shown.cortex = brain;
    // Whose brain it is not, is said in words for patients.
    shown.under_coil = UnderCoil::lit;
    shown.skin_opacity = skin_over_brain;
  }
  const geometry::Placement& site = plan.treatment;
  const Eigen::Vector3d right = site.front.cross(site.normal);
  shown.notes.push_back(
      named(site.pulse + (site.lift_mm + above_coil_mm) * site.normal - beside_coil_mm * right,
            name_line_mm * site.normal, words(Words::tr("the coil"))));
  shown.notes.push_back(
      named(site.pulse, name_line_mm * (0.6 * site.normal - site.forward).normalized(),
            words(brain ? Words::tr("the place that lights up") : Words::tr("the place it reaches"))));
  return shown;
}

}  // namespace scalpmark::viewer
