#pragma once

#include <QObject>
#include <functional>

#include "viewer/window/jobs/coil_contact.h"
#include "viewer/window/jobs/field_under_coil.h"
#include "viewer/window/jobs/hand_tolerance.h"
#include "viewer/window/steps/worksheet.h"

namespace scalpmark::window {

/// What takes a moment to look into and is shown when it is there: how the coil rests, how far off hands are.
/// And where the coil's field goes, which is quick.
class LookedInto : public QObject {
  Q_OBJECT
public:
  LookedInto(Session& session, Worksheet& worksheet);

  /// Shows the gaps under the coil, or leaves them out.
  void set_gaps(bool on);
  /// Shows the induced field under the coil, or leaves it out.
  void set_field(bool on);
  /// Has looked into what the content is about, and adds what is known by now.
  void add_to(StageContent& content);

  [[nodiscard]] const CoilContact& under_coil() const { return under_coil_; }
  [[nodiscard]] const HandTolerance& by_hand() const { return by_hand_; }

signals:
  /// More is known, or something else is wanted: the stage is to be shown anew.
  void changed();
  void gaps_switched(bool on);
  void field_switched(bool on);
  /// How large the part of the brain is that is lit for a patient, cm2.
  void patch_lit(double cm2);

private:
  void add_field_to(StageContent& content);
  [[nodiscard]] std::array<GapPanel*, 2> gap_panels() const;
  /// Whoever asked for the gaps sees the whole line; later ones scroll nothing.
  void bring_line_into_sight();
  void connect_tolerance();

  Session& session_;
  Worksheet& worksheet_;
  bool gaps_ = false, gaps_asked_ = false, field_ = false;
  CoilContact under_coil_;
  HandTolerance by_hand_;
  FieldUnderCoil field_under_coil_;
};

}  // namespace scalpmark::window
