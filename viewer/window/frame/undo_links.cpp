#include "viewer/window/frame/undo_links.h"

#include <utility>

namespace scalpmark::window {

UndoLinks::UndoLinks(UndoList& list, Session& session, CoilOnStage& coil, Visit& visit, PointPlacing& placing,
                     const Worksheet& worksheet)
    : list_(list), coil_(coil), worksheet_(worksheet) {
  connect(&coil, &CoilOnStage::handled, this,
          [this](const QString& what, const HeldCoil& before, const QString& burst) {
            list_.add(UndoList::Kind::coil,
                      {what, [this, before] { put_coil(before); },
                       [this, after = coil_.coil()] { put_coil(after); }},
                      burst);
          });
  connect(&visit, &Visit::did, this, [this, &visit](const QString& what, const Visit::Entered& before) {
    list_.add(UndoList::Kind::visit, {what, [&visit, before] { visit.restore(before); },
                                      [&visit, after = visit.entered()] { visit.restore(after); }});
  });
  connect(
      &placing, &PointPlacing::placed, this,
      [this, &session](Fiducial which, const std::optional<Eigen::Vector3d>& before, const QString& burst) {
        list_.add(UndoList::Kind::point,
                  {tr("Point placed"), [&session, which, before] { session.place(which, before); },
                   [&session, which, after = session.unplaced()->at(which)] { session.place(which, after); }},
                  burst);
      });
  connect(&session, &Session::unplaced_changed, this, [this, &session] {
    const bool before = std::exchange(placing_, session.unplaced().has_value());
    if (before != placing_) list_.forget(UndoList::Kind::point);
  });
}

void UndoLinks::put_coil(HeldCoil coil) {
  const bool on_grid = coil.on == viewer::CoilOn::spot || coil.on == viewer::CoilOn::start;
  if (worksheet_.current() == Worksheet::pulses_index) return;  // there it lies on the spot of the next pulse
  if (on_grid && worksheet_.current() != Worksheet::search_index) {
    coil = {};
    coil.on = viewer::CoilOn::treatment;
  }
  coil_.restore(coil);
}

}  // namespace scalpmark::window
