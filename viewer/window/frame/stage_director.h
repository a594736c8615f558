#pragma once

#include <QObject>
#include <QString>
#include <array>
#include <functional>
#include <optional>

#include "viewer/window/frame/looked_into.h"
#include "viewer/window/frame/menus.h"
#include "viewer/window/frame/mode.h"
#include "viewer/window/frame/through_skin.h"
#include "viewer/window/session/coil_on_stage.h"
#include "viewer/window/session/session.h"
#include "viewer/window/stage_view/stage_view.h"
#include "viewer/window/teach/lesson_room.h"

namespace scalpmark::window {

/// Keeps the stage up to date: asks the mode what is on it, adds what was chosen for all of them (skin,
/// legend, numbers, gaps), and shows it. While points are placed on a bare skin, that is shown in any mode.
class StageDirector : public QObject, public LessonRoom {
  Q_OBJECT
public:
  StageDirector(Session& session, CoilOnStage& coil, StageView& stage, Menus& menus,
                ThroughSkin& through_skin, LookedInto& looked_into);

  /// Who says what is on the stage in a mode. To be said of each mode before it is set.
  void set_content(Mode mode, std::function<StageContent()> content);
  /// The same of a mode that has a head of its own: it shows itself, and looks where it wants.
  struct OwnStage {
    std::function<void()> refresh, look;
  };
  void set_own_stage(Mode mode, OwnStage own);
  /// To be shown from the next time on that something is.
  void set_mode(Mode mode) { mode_ = mode; }
  [[nodiscard]] Mode mode() const { return mode_; }
  /// Thrown on a wall: nothing but the head with what it is about, and the caution in small print.
  void set_projected(bool projected) { projected_ = projected; }

  void refresh_stage() override;
  void look() override;
  void refresh_and_look() override;
  /// Another case, head or plan is in force; where the coil lies on the other side of the head from now on,
  /// or the head is a fresh one, the stage turns there too.
  void show_session(bool fresh_head);
  /// Turns to what the mode or its step is about, which begins now.
  void begin_looking();
  /// The same once the stage is up to date.
  void begin_step();

  [[nodiscard]] const Session& session() const override { return session_; }
  [[nodiscard]] bool lesson_is_on() const override { return mode_ == Mode::teach; }
  [[nodiscard]] bool is_animated() const override { return stage_.is_animated(); }
  [[nodiscard]] QWidget& over_stage() override { return stage_; }
  void cover_stage(const QRect& part) override { stage_.set_covered(part); }
  void switch_side() override;

signals:
  /// What the line under the stage says.
  void status(const QString& line);
  /// Whether the coil on the stage is one in the hand.
  void hand_shown(bool in_hand);
  /// The coil that staff at work see.
  void coil_shown(const HeldCoil& coil);
  /// The stage is about to be turned to what begins.
  void begins();

private:
  [[nodiscard]] StageContent content_now() const { return content_[static_cast<std::size_t>(mode_)](); }
  void dress(StageContent& content);
  [[nodiscard]] const OwnStage& own_now() const { return own_[static_cast<std::size_t>(mode_)]; }
  [[nodiscard]] bool has_plan() const { return session_.is_ready() && !session_.unplaced(); }

  Session& session_;
  CoilOnStage& coil_;
  StageView& stage_;
  Menus& menus_;
  ThroughSkin& through_skin_;
  LookedInto& looked_into_;
  std::array<std::function<StageContent()>, mode_count> content_;
  std::array<OwnStage, mode_count> own_;
  Mode mode_ = Mode::worksheet;
  bool projected_ = false;
  std::optional<geometry::Side> coil_side_;  ///< of the coil as it was last shown
};

}  // namespace scalpmark::window
