// Where pulses were wanted, of those that go elsewhere: a coil laid over a mark that another rule drew. A
// hollow disc each, with a line to where the pulse goes, and what to do about it in words.
#include "geometry/plan/pulse_shift.h"
#include "viewer/stage/things/things.h"
#include "viewer/words/numbers.h"
#include "viewer/words/shift_words.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

ShowThing show_wanted;

namespace {

geometry::MarkRule drawn_by(const Showing& now) {
  return now.shown.coil_on == CoilOn::treatment ? now.the_case.treatment.drawn_by
                                                : now.the_case.search.drawn_by;
}

}  // namespace

Part show_wanted(const Showing& now, Surroundings& around) {
  Part part;
  part.thing = Thing::wanted;
  const Shown& shown = now.shown;
  if (!shown.has(Thing::wanted)) return part;
  const auto add = [&](const std::string& name, const geometry::Placement& p, bool small) {
    if (now.is_in_hotspot_ring(p.wanted) || (small && now.is_in_wanted_disc(p.wanted))) return;
    part.marks.push_back(now.mark(Thing::wanted, name, small ? Shape::small_hollow_disc : Shape::hollow_disc,
                                  Role::pulse, p.wanted, p.front));
    part.lines.push_back({{p.wanted, p.pulse}, small ? 1.2 : 1.8, Role::pulse, 1.4});
  };
  if (shown.has(Thing::grid))
    for (const auto& spot : now.plan.grid)
      if (geometry::is_shifted(spot.placement))
        add("grid " + std::to_string(spot.row) + " " + std::to_string(spot.column) + " wanted",
            spot.placement, true);
  const geometry::Placement& p = now.placement;
  if (geometry::is_shifted(p) && (shown.has(Thing::coil) || shown.has(Thing::edge_marks))) {
    add("wanted", p, false);
    Label label;
    const bool on_start = shown.has(Thing::start) && (p.wanted - now.plan.start.wanted).norm() < one_place_mm;
    label.text = words(on_start ? Words::tr("Search start, wanted here: %1 from the pulse")
                                : Words::tr("Wanted here, %1 from the pulse"),
                       {tape_length(p.wanted_to_pulse_mm)});
    label.clear_px = 8;
    label.may_go_far = true;
    label.priority = label_priority::wanted;
    if (!part.marks.empty() && part.marks.back().name == "wanted") part.marks.back().label = label;
    if (around.with_column)
      if (const std::string sentence = shift_sentence(p, drawn_by(now), now.the_case.coil);
          !sentence.empty()) {
        around.remarks.push_back({words(Words::tr("Drawn by %1, laid by %2"),
                                        {words(geometry::in_words(drawn_by(now))),
                                         words(geometry::in_words(now.the_case.coil.laid_by))}),
                                  Remark::Weight::heading});
        around.remarks.push_back({sentence});
      }
  }
  if (!part.marks.empty())
    around.legend.push_back({LegendRow::Sample::shape, Shape::hollow_disc, Role::pulse,
                             words(Words::tr("Where the pulse was wanted")), at_wanted_in_legend});
  return part;
}

}  // namespace scalpmark::viewer
