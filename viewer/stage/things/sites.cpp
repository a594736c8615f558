// Start (disc), hotspot (ring), treatment site (diamond) and where the site might have been (small diamonds).
#include "viewer/stage/things/things.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

ShowThing show_sites;

namespace {

/// A site so near to the one that was chosen is that one, which carries the big diamond already.
constexpr double same_site_mm = 0.5;

std::string treatment_text(const geometry::Case& the_case) {
  const geometry::TreatmentSettings& treatment = the_case.treatment;
  if (geometry::site_is_open(the_case))
    return words(Words::tr("Site if the middle spot answers, %1 forward"),
                 {tape_length(treatment.distance_mm)});
  return treatment.rule == geometry::TreatmentRule::forward
             ? words(Words::tr("Treatment site, %1 forward of the hotspot"),
                     {tape_length(treatment.distance_mm)})
             : words(Words::tr("Treatment site, at %1"), {treatment.label});
}

}  // namespace

Part show_sites(const Showing& now, Surroundings& around) {
  const Shown& shown = now.shown;
  const geometry::Plan& plan = now.plan;
  Part part;
  part.thing = Thing::treatment;
  const auto add = [&](Mark mark, int priority, const std::string& text) {
    Label label;
    label.text = text;
    label.clear_px = reach_px(mark.shape) + 2;
    label.may_go_far = true;
    label.priority = priority;
    label.bold = mark.thing == Thing::treatment || mark.thing == Thing::hotspot;
    mark.label = label;
    part.marks.push_back(std::move(mark));
  };
  const auto explain = [&](Shape shape, Role role, const std::string& text) {
    around.legend.push_back({LegendRow::Sample::shape, shape, role, text, at_sites_in_legend});
  };
  // Pale while it is not known to be there.
  const Role site_role = geometry::site_is_open(now.the_case) ? Role::alternative : Role::treatment;
  if (shown.has(Thing::alternatives))
    for (const auto& a : plan.treatment_alternatives) {
      if (a.tape_from_treatment_mm < same_site_mm) continue;
      const bool forward = a.rule == geometry::TreatmentRule::forward;
      const auto dash = a.label.find('-');
      const std::string name =
          forward ? words(Words::tr("%1 forward"), {tape_length(a.distance_mm)})
          : dash == std::string::npos
              ? a.label
              : words(Words::tr("half way %1 to %2"), {a.label.substr(0, dash), a.label.substr(dash + 1)});
      add(now.mark(Thing::alternatives, name, Shape::small_diamond, Role::alternative, a.pulse,
                   plan.axes.front),
          60, words(Words::tr("%1: %2 from the site"), {name, tape_length(a.tape_from_treatment_mm)}));
    }
  if (shown.has(Thing::treatment))
    add(now.mark(Thing::treatment, "treatment", Shape::diamond, site_role, plan.treatment.wanted,
                 plan.treatment.forward),
        100, treatment_text(now.the_case));
  const bool hotspot_known = !now.the_case.hotspot_awaited;
  if (shown.has(Thing::hotspot) && hotspot_known)
    add(now.mark(Thing::hotspot, "hotspot", Shape::ring, Role::hotspot, plan.hotspot.pulse,
                 plan.hotspot.forward),
        99, words(Words::tr("Hotspot")));
  if (shown.has(Thing::start))
    add(now.mark(Thing::start, "start", Shape::disc, Role::start, plan.start.wanted, plan.start.forward), 95,
        words(Words::tr("Search start")));

  if (shown.has(Thing::start)) explain(Shape::disc, Role::start, words(Words::tr("Search start")));
  if (shown.has(Thing::hotspot) && hotspot_known)
    explain(Shape::ring, Role::hotspot, words(Words::tr("Hotspot")));
  if (shown.has(Thing::treatment))
    explain(Shape::diamond, site_role,
            words(geometry::site_is_open(now.the_case) ? Words::tr("Site if the middle spot answers")
                                                       : Words::tr("Treatment site")));
  if (shown.has(Thing::alternatives))
    explain(Shape::small_diamond, Role::alternative, words(Words::tr("Other sites in use")));
  return part;
}

}  // namespace scalpmark::viewer
