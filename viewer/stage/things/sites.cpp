// Start (disc), hotspot (ring), treatment site (diamond) and where the site might have been (small diamonds).
#include "viewer/stage/things/things.h"
#include "viewer/words/numbers.h"
#include "viewer/words/site_words.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

ShowThing show_sites;

namespace {

/// A site so near to the one that was chosen is that one, which carries the big diamond already.
constexpr double same_site_mm = 0.5;

QString site_label(const geometry::Case& c) {
  return geometry::site_is_open(c) ? Words::tr("Site %1") : Words::tr("Treatment site, %1");
}

}  // namespace

Part show_sites(const Showing& now, Surroundings& around) {
  const Shown& shown = now.shown;
  const geometry::Plan& plan = now.plan;
  Part part;
  part.thing = Thing::treatment;
  const auto add = [&](Mark mark, int priority, const std::string& text, const std::string& aside = {}) {
    Label label;
    label.text = text;
    label.clear_px = reach_px(mark.shape) + 2;
    label.may_go_far = true;
    label.priority = priority;
    label.bold = mark.thing == Thing::treatment || mark.thing == Thing::hotspot;
    label.aside = aside;
    mark.label = label;
    part.marks.push_back(std::move(mark));
  };
  const auto explain = [&](Shape shape, Role role, const std::string& text) {
    around.legend.push_back({LegendRow::Sample::shape, shape, role, text, at_sites_in_legend});
  };
  // Pale while it is not known to be there.
  const Role site_role = geometry::site_is_open(now.the_case) ? Role::alternative : Role::treatment;
  if (shown.has(Thing::alternatives))
    for (std::size_t i = 0; i < plan.treatment_alternatives.size(); ++i) {
      const geometry::TreatmentAlternative& a = plan.treatment_alternatives[i];
      if (a.tape_from_treatment_mm < same_site_mm) continue;
      const std::string name = other_site_in_short(a);
      add(now.mark(Thing::alternatives, name, Shape::small_diamond, Role::alternative, a.pulse,
                   plan.axes.front),
          label_priority::other_site,
          words(Words::tr("%1: %2 from the site"), {name, tape_length(a.tape_from_treatment_mm)}));
      if (!shown.names_all && shown.named_site != i) part.marks.back().label.reset();
    }
  if (shown.has(Thing::treatment))
    add(now.mark(Thing::treatment, "treatment", Shape::diamond, site_role, plan.treatment.wanted,
                 plan.treatment.forward),
        label_priority::site,
        shown.brief
            ? words(geometry::site_is_open(now.the_case) ? Words::tr("Site if the middle spot answers")
                                                         : Words::tr("Treatment site"))
            : words(site_label(now.the_case), {site_in_words(now.the_case)}),
        words(geometry::site_is_open(now.the_case) ? Words::tr("site if the middle spot answers")
                                                   : Words::tr("treatment site")));
  const bool hotspot_known = !now.the_case.hotspot_awaited;
  if (shown.has(Thing::hotspot) && hotspot_known)
    add(now.mark(Thing::hotspot, "hotspot", Shape::ring, Role::hotspot, plan.hotspot.pulse,
                 plan.hotspot.forward),
        label_priority::hotspot, words(Words::tr("Hotspot")));
  // A disc in the ring would look like a third thing.
  const bool start_seen = shown.has(Thing::start) && !now.is_in_hotspot_ring(plan.start.wanted) &&
                          !now.is_in_wanted_disc(plan.start.wanted);
  if (start_seen)
    add(now.mark(Thing::start, "start", Shape::disc, Role::start, plan.start.wanted, plan.start.forward),
        label_priority::start, words(Words::tr("Search start")));

  if (start_seen) explain(Shape::disc, Role::start, words(Words::tr("Search start")));
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
