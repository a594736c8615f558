#include "viewer/window/frame/main_window.h"

// What takes a moment to look into and is shown when it is there: how the coil rests, and how far off hands
// are.

namespace scalpmark::window {

using viewer::Thing;

void MainWindow::connect_looked_into() {
  for (GapPanel* panel : {worksheet_->treat()->gaps(), worksheet_->check()->gaps()})
    connect(panel, &GapPanel::toggled, this, &MainWindow::set_gaps);
  connect(&under_coil_, &CoilContact::changed, this, [this] {
    refresh_stage();
    // Whoever asked for it sees the whole line; later ones scroll nothing.
    if (!std::exchange(gaps_asked_, false)) return;
    GapPanel* asked = worksheet_->current() == Worksheet::treat_index   ? worksheet_->treat()->gaps()
                      : worksheet_->current() == Worksheet::check_index ? worksheet_->check()->gaps()
                                                                        : nullptr;
    QTimer::singleShot(0, this, [this, asked] {
      if (asked && asked->isVisible()) worksheet_->ensureWidgetVisible(asked, 0, 12);
    });
  });
  TolerancePanel* panel = worksheet_->check()->tolerance();
  connect(panel, &TolerancePanel::wanted, this, &MainWindow::refresh_stage);
  connect(panel, &TolerancePanel::stopped, this, [this] { by_hand_.give_up(); });
  connect(panel, &TolerancePanel::again, this, [this] {
    by_hand_.forget();
    refresh_stage();
  });
  // Queued: it may begin while the stage is being brought up to date.
  connect(
      &by_hand_, &HandTolerance::changed, this,
      [this, panel] {
        panel->show_tolerance(by_hand_);
        if (by_hand_.found()) refresh_stage();
      },
      Qt::QueuedConnection);
  connect(&session_, &Session::head_changed, this, [this] {
    under_coil_.stop_looking();
    by_hand_.forget();
  });
}

void MainWindow::set_gaps(bool on) {
  if (on == gaps_) return;
  gaps_ = gaps_asked_ = on;
  gaps_action_->setChecked(on);
  if (!on) under_coil_.stop_looking();
  for (GapPanel* panel : {worksheet_->treat()->gaps(), worksheet_->check()->gaps()}) panel->set_on(on);
  refresh_stage();
}

void MainWindow::add_looked_into(viewer::Shown& shown) {
  if (mode_ == Mode::explain) return;  // no jargon, no numbers
  const geometry::Head& head = session_.head().head;
  if (gaps_ && shown.has(Thing::coil)) {
    under_coil_.look_under(head, session_.kept().entered, viewer::placement_shown(session_.plan(), shown));
    shown.things.insert(Thing::gaps);
    shown.gaps = under_coil_.gaps();
    for (GapPanel* panel : {worksheet_->treat()->gaps(), worksheet_->check()->gaps()})
      panel->show_contact(under_coil_);
  }
  const TolerancePanel* panel = worksheet_->check()->tolerance();
  if (!panel->is_open() || !(mode_ == Mode::check || worksheet_->current() == Worksheet::check_index)) return;
  by_hand_.work_out(head, session_.kept(), session_.plan());
  if (!panel->on_head()) return;
  shown.things.insert(Thing::tolerance);
  shown.tolerance = by_hand_.found();
}

}  // namespace scalpmark::window
