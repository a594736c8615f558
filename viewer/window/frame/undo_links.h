#pragma once

#include <QObject>

#include "viewer/window/frame/point_placing.h"
#include "viewer/window/session/coil_on_stage.h"
#include "viewer/window/session/undo_list.h"
#include "viewer/window/session/visit.h"
#include "viewer/window/steps/worksheet.h"

namespace scalpmark::window {

/// Tells the list of what was done how to take back what the user does to the coil in the hand, to today's
/// marks and to points on a skin.
class UndoLinks : public QObject {
  Q_OBJECT
public:
  UndoLinks(UndoList& list, Session& session, CoilOnStage& coil, Visit& visit, PointPlacing& placing,
            const Worksheet& worksheet);

private:
  /// Where the coil was, or the place of the step that is open by now.
  void put_coil(HeldCoil coil);

  UndoList& list_;
  CoilOnStage& coil_;
  const Worksheet& worksheet_;
  bool placing_ = false;
};

}  // namespace scalpmark::window
