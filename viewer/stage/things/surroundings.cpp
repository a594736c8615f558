// Title, caution and the numbers that staff copy down.
#include "viewer/stage/things/surroundings.h"

#include <optional>

#include "viewer/stage/things/things.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

ShowThing show_surroundings;

namespace {

NumberTable numbers(const Showing& now) {
  const geometry::Placement& placement = now.placement;
  const auto& p = placement.pulse_tape;
  const auto& e = placement.edge_mark_tape;
  // What is still being worked out keeps its place, so that the table does not come and go; that it is not
  // there yet is said once.
  using From = geometry::TapeFrom;
  const auto length = [](const std::optional<From>& from, double From::*what) {
    return from ? tape_number((*from).*what) : std::string("\u2026");
  };
  const auto pulse = [&](double From::*what) { return length(p, what); };
  const auto edge = [&](double From::*what) {
    return placement.mark ? length(e, what) : words(Words::tr("none", "no edge mark"));
  };
  NumberTable table;
  table.where = words(Words::tr("Coil %1", "where it lies"), {where_shown(now.shown)});
  table.angle = coil_angle(placement.angle_deg);
  table.reach =
      words(Words::tr("centre to front edge %1"), {tape_length(now.the_case.coil.centre_to_edge_mm)});
  table.rows = {
      {p ? words(Words::tr("tape, %1, from", "cm or inches"), {tape_unit()})
         : words(Words::tr("tapes: not yet", "tape distances are not worked out")),
       words(Words::tr("pulse")), words(Words::tr("edge mark"))},
      {words(Words::tr("vertex")), pulse(&From::vertex_mm), edge(&From::vertex_mm)},
      {words(Words::tr("nasion")), pulse(&From::nasion_mm), edge(&From::nasion_mm)},
      {words(Words::tr("left tragus")), pulse(&From::left_tragus_mm), edge(&From::left_tragus_mm)},
      {words(Words::tr("right tragus")), pulse(&From::right_tragus_mm), edge(&From::right_tragus_mm)}};
  return table;
}

/// The side of the coil shown; both, where the search is on one side and the treatment on the other.
QString side_stimulated(const Showing& now) {
  const bool left = geometry::side_of(now.plan.treatment) == geometry::Side::left;
  if (geometry::side_of(now.plan.treatment) == now.the_case.side)
    return left ? Words::tr("Left side stimulated") : Words::tr("Right side stimulated");
  return left ? Words::tr("Search on the right side, treatment on the left")
              : Words::tr("Search on the left side, treatment on the right");
}

}  // namespace

std::string caution_text() {
  return words(
      Words::tr("Training and illustration only; not a navigation or treatment device. Follow the device's "
                "instructions, local codes and the licensed clinician."));
}

Part show_surroundings(const Showing& now, Surroundings& around) {
  const Shown& shown = now.shown;
  std::string head = shown.head_description;
  if (!head.empty() && head.front() >= 'a' && head.front() <= 'z')
    head.front() = static_cast<char>(head.front() - 'a' + 'A');
  if (shown.has(Thing::title)) {
    const std::string side = words(side_stimulated(now));
    around.title = {now.the_case.label.empty() ? words(Words::tr("Unnamed case")) : now.the_case.label,
                    head.empty() ? side : head + ". " + side};
  }
  // Which head it is stands before the caution where no title says so.
  around.caution_share = shown.caution_share;
  if (shown.caution)
    around.caution = around.title || head.empty() ? caution_text() : head + ". " + caution_text();
  if (shown.has(Thing::numbers)) around.numbers = numbers(now);
  around.with_column = shown.has(Thing::legend) || shown.has(Thing::numbers);
  Part part;
  part.thing = Thing::title;
  return part;
}

}  // namespace scalpmark::viewer
