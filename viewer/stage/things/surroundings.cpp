// Title, caution and the numbers that staff copy down.
#include "viewer/stage/things/surroundings.h"

#include <cmath>

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
  // What is still being worked out keeps its place, so that the table does not come and go.
  const auto length = [](double mm) { return std::isnan(mm) ? said(Words::tr("not yet")) : cm(mm); };
  const auto edge = [&](double geometry::TapeFrom::*what) {
    return e ? length((*e).*what) : said(Words::tr("none", "no edge mark"));
  };
  using From = geometry::TapeFrom;
  NumberTable table;
  table.where = said(Words::tr("Coil %1", "where it lies"), {where_shown(now.shown)});
  table.angle = said(Words::tr("%1 to the midline, edge at %2"),
                     {in_degrees(placement.angle_deg), in_cm(now.entered.coil.centre_to_edge_mm)});
  table.rows = {{said(Words::tr("cm of tape from")), said(Words::tr("pulse")), said(Words::tr("edge mark"))},
                {said(Words::tr("vertex")), length(p.vertex_mm), edge(&From::vertex_mm)},
                {said(Words::tr("nasion")), length(p.nasion_mm), edge(&From::nasion_mm)},
                {said(Words::tr("left tragus")), length(p.left_tragus_mm), edge(&From::left_tragus_mm)},
                {said(Words::tr("right tragus")), length(p.right_tragus_mm), edge(&From::right_tragus_mm)}};
  return table;
}

}  // namespace

std::string caution_text() {
  return said(
      Words::tr("Training and illustration only; not a navigation or treatment device. Follow the device's "
                "instructions, local codes and the licensed clinician."));
}

Part show_surroundings(const Showing& now, Surroundings& around) {
  const Shown& shown = now.shown;
  std::string head = shown.head_description;
  if (!head.empty() && head.front() >= 'a' && head.front() <= 'z')
    head.front() = static_cast<char>(head.front() - 'a' + 'A');
  if (shown.has(Thing::title)) {
    const std::string side =
        said(now.entered.side == geometry::Side::left ? Words::tr("Left side stimulated")
                                                      : Words::tr("Right side stimulated"));
    around.title = {now.entered.label.empty() ? said(Words::tr("Unnamed case")) : now.entered.label,
                    head.empty() ? side : head + ". " + side};
  }
  // Which head it is stands before the caution where no title says so.
  if (shown.caution)
    around.caution = around.title || head.empty() ? caution_text() : head + ". " + caution_text();
  if (shown.has(Thing::numbers)) around.numbers = numbers(now);
  around.with_column = shown.has(Thing::legend) || shown.has(Thing::numbers);
  Part part;
  part.thing = Thing::title;
  return part;
}

}  // namespace scalpmark::viewer
