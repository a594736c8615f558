// Who hears of what: the window's parts, joined by their signals.
#include <QApplication>
#include <utility>

#include "models/heads/kept_skins.h"
#include "viewer/window/frame/dialogs.h"
#include "viewer/window/frame/main_window.h"
#include "viewer/window/frame/theme.h"

namespace scalpmark::window {

void MainWindow::connect_session() {
  connect(&session_, &Session::head_changed, this, [this] {
    coil_.put_back();
    fresh_head_ = true;
  });
  connect(&session_, &Session::unplaced_changed, this, &MainWindow::show_unplaced);
  connect(&session_, &Session::saved_changed, this, [this] {
    worksheet_->save()->show_case();
    menus_->show_locked(session_.is_locked());
    show_title();
  });
  connect(&session_, &Session::refused, this, [this](const QString& sentence) {
    // A refusal of tapes belongs beside the tapes, if they are in sight.
    if (worksheet_->current() == Worksheet::measure_index && session_.is_ready())
      worksheet_->measure()->set_problem(sentence);
    else
      show_notice(sentence);
  });
  connect(&session_, &Session::working, work_, &WorkBar::show_work);
  connect(&session_, &Session::rested, this, [this] {
    if (!output_.is_writing()) work_->rest();
  });
  connect(work_, &WorkBar::cancelled, this, [this] {
    if (output_.is_writing()) {
      output_.give_up();
      return;
    }
    session_.cancel();
    worksheet_->show_case();
  });
  connect(&visit_, &Visit::changed, this, &MainWindow::show_today);
  // Queued: it may begin while the stage is being brought up to date.
  connect(
      &course_check_, &CourseCheck::changed, this,
      [this] {
        if (mode() == Mode::course) refresh_stage();
      },
      Qt::QueuedConnection);
}

void MainWindow::connect_worksheet() {
  connect(worksheet_, &Worksheet::step_changed, this, &MainWindow::step_changed);
  connect(worksheet_->measure(), &MeasureStep::head_wanted, &files_, &CaseFiles::open_head);
  connect(worksheet_->landmarks(), &LandmarksStep::system_chosen, this, [this] {
    worksheet_->landmarks()->show_case();
    refresh_stage();
  });
  connect(worksheet_->site(), &SiteStep::other_site_named, this, [this] { director_->refresh_stage(); });
  connect(worksheet_->landmarks(), &LandmarksStep::landmark_found, this, &MainWindow::show_found_landmark);
  connect(worksheet_->search(), &SearchStep::spot_wanted, &coil_, &CoilOnStage::lay_on_spot);
  connect(&log_, &PulseLog::spot_changed, this, &MainWindow::lay_on_spot);
  connect(&log_, &PulseLog::other_visit_shown, this, &MainWindow::refresh_stage);
  connect(worksheet_->check(), &CheckStep::point_wanted, this,
          [this] { stage_->set_pointing(worksheet_->check()->wanted().has_value()); });
  connect(worksheet_->save(), &SaveStep::save_wanted, &files_, &CaseFiles::save);
  connect(worksheet_->save(), &SaveStep::sheet_wanted, &output_, &Output::save_sheet);
  connect(worksheet_->save(), &SaveStep::page_wanted, this,
          [this] { output_.save_page(viewer::Face::technician); });
  connect(worksheet_->save(), &SaveStep::strips_wanted, &output_, &Output::save_strips);
  connect(worksheet_->save(), &SaveStep::export_wanted, &output_, &Output::save_export);
  connect(worksheet_->save(), &SaveStep::print_wanted, &output_, &Output::print_sheet);
  connect(worksheet_->save(), &SaveStep::picture_wanted, &output_, &Output::save_picture);
}

void MainWindow::connect_stage() {
  connect(stage_, &StageView::coil_moved, &coil_, &CoilOnStage::move_to);
  connect(stage_, &StageView::coil_turned, &coil_, &CoilOnStage::turn);
  connect(stage_, &StageView::coil_nudged, &coil_, &CoilOnStage::nudge);
  connect(stage_, &StageView::spot_clicked, this, [this](int row, int column) {
    // Where pulses are logged the coil follows the log.
    const geometry::GridPosition spot{row, column};
    if (worksheet_->current() != Worksheet::pulses_index)
      coil_.lay_on_spot(row, column);
    else if (log_.spot() == spot)
      lay_on_spot();
    else
      log_.set_spot(spot);
  });
  connect(stage_, &StageView::skin_pointed, this, &MainWindow::point_on_skin);
  connect(&coil_, &CoilOnStage::refused, this, &MainWindow::show_notice);
  connect(looked_into_.get(), &LookedInto::patch_lit, explain_, &ExplainPanel::show_patch);
  connect(looked_into_.get(), &LookedInto::patch_lit, this, [this](double cm2) { output_.patch_cm2 = cm2; });
  connect(looked_into_.get(), &LookedInto::gaps_switched, menus_, &Menus::show_gaps);
  connect(looked_into_.get(), &LookedInto::changed, this,
          [this] { verdict_->show_verdict(worksheet_->check()->verdict()); });
  connect(stage_, &StageView::coil_put_down, &coil_, &CoilOnStage::put_down);
  connect(director_.get(), &StageDirector::status, foot_, &Foot::say);
  connect(director_.get(), &StageDirector::hand_shown, this, [this](bool in_hand) {
    foot_->show_hand(in_hand, worksheet_->current() == Worksheet::search_index);
  });
  connect(foot_, &Foot::back_wanted, this, &MainWindow::put_coil_back);
  connect(director_.get(), &StageDirector::coil_shown, worksheet_->search(), &SearchStep::show_coil);
  connect(director_.get(), &StageDirector::begins, this, [this] {
    if (mode() == Mode::teach) teach_->lay_tapes();
  });
  connect(&through_skin_, &ThroughSkin::no_brain, this, &MainWindow::show_notice);
  connect(bar_, &TopBar::mode_wanted, this, &MainWindow::set_mode);
  connect(explain_, &ExplainPanel::picture_wanted, &output_, &Output::save_picture);
  connect(explain_, &ExplainPanel::handout_wanted, this, [this] { output_.save_handout(explain_->whose()); });
  connect(explain_, &ExplainPanel::print_wanted, this, [this] { output_.print_handout(explain_->whose()); });
  connect(explain_, &ExplainPanel::page_wanted, this, [this] { output_.save_page(viewer::Face::patient); });
  connect(explain_, &ExplainPanel::done, this, [this] { set_mode(Mode::worksheet); });
}

void MainWindow::connect_files() {
  connect(&files_, &CaseFiles::notice, this, &MainWindow::show_notice);
  connect(&files_, &CaseFiles::recent_changed, this, [this] { menus_->show_recent(settings_.recent); });
  connect(&files_, &CaseFiles::starts_new, this, [this] {
    coil_.put_back();
    worksheet_->go_to(Worksheet::measure_index);
  });
  output_.why_no_sheet = [this] {
    return tapes_question_->is_open()
               ? tr("Say first whose head this is: the tapes of the case do not fit it.")
               : QString();
  };
  connect(&output_, &Output::working, work_, &WorkBar::show_work);
  connect(&output_, &Output::notice, notice_, &NoticeBar::say);
  connect(&output_, &Output::over, this, &MainWindow::output_is_over);
  connect(bar_, &TopBar::picture_wanted, &output_, &Output::save_picture);
  connect(bar_, &TopBar::sheet_wanted, &output_, &Output::save_sheet);
}

void MainWindow::connect_menus() {
  connect(menus_, &Menus::new_case, &files_, &CaseFiles::start_new);
  connect(menus_, &Menus::open, &files_, &CaseFiles::open);
  connect(menus_, &Menus::open_recent, &files_, &CaseFiles::open_instead);
  connect(menus_, &Menus::save, &files_, &CaseFiles::save);
  connect(menus_, &Menus::save_as, &files_, &CaseFiles::save_as);
  connect(menus_, &Menus::save_picture, &output_, &Output::save_picture);
  connect(menus_, &Menus::save_sheet, &output_, &Output::save_sheet);
  connect(menus_, &Menus::save_export, &output_, &Output::save_export);
  connect(menus_, &Menus::print_sheet, &output_, &Output::print_sheet);
  connect(menus_, &Menus::save_strips, &output_, &Output::save_strips);
  connect(menus_, &Menus::save_page, this, [this] { output_.save_page(viewer::Face::technician); });
  connect(menus_, &Menus::forget_heads, this, [this] {
    const auto count = static_cast<int>(models::KeptSkins().forget());
    foot_->say(
        count == 1
            ? tr("1 head was kept and is forgotten; its file opens more slowly once.")
            : tr("%1 heads were kept and are forgotten; their files open more slowly once.").arg(count));
  });
  connect(menus_, &Menus::copy_picture, &output_, &Output::copy_picture);
  connect(menus_, &Menus::undo, this,
          [this] { mode() == Mode::practise ? practise_->run().undo() : undo_.undo(); });
  connect(menus_, &Menus::redo, this,
          [this] { mode() == Mode::practise ? practise_->run().redo() : undo_.redo(); });
  connect(&undo_, &UndoList::changed, this, &MainWindow::show_undo);
  connect(menus_, &Menus::look, this, [this](viewer::View view) {
    mode() == Mode::practise ? practise_->look_from(view) : stage_->look(view);
  });
  connect(menus_, &Menus::lay_coil, &coil_, &CoilOnStage::lay_on);
  connect(menus_, &Menus::skin_opacity, &through_skin_, &ThroughSkin::set_opacity);
  connect(menus_, &Menus::gaps, looked_into_.get(), &LookedInto::set_gaps);
  connect(menus_, &Menus::label_switched, this,
          [this] { explain_->show_case(session_, menus_->label_in_explain()); });
}

void MainWindow::connect_practise() {
  practise_->ask_replace = [this](const QString& path) { return ask_about_replacing(this, path); };
  practise_->ask_unsaved = [this] { return ask_about_unsaved_result(this); };
  connect(practise_.get(), &Practise::notice, this, [this](const QString& sentence, bool done) {
    notice_->say(sentence, done ? NoticeBar::Kind::done : NoticeBar::Kind::problem);
  });
  connect(practise_.get(), &Practise::working, work_, &WorkBar::show_work);
  connect(practise_.get(), &Practise::rested, work_, &WorkBar::rest);
  connect(practise_.get(), &Practise::undo_changed, this, &MainWindow::show_undo);
}

void MainWindow::show_undo() {
  if (mode() == Mode::practise)
    menus_->show_hands_undo(practise_->run().can_undo(), practise_->run().can_redo());
  else
    menus_->show_history(undo_);
}

void MainWindow::connect_looks() {
  connect(looks_.get(), &Looks::unit_chosen, this, &MainWindow::set_unit);
  connect(looks_.get(), &Looks::changed, this, [this] { set_mode(mode()); });
  connect(menus_, &Menus::locked, &session_, &Session::set_locked);
}

}  // namespace scalpmark::window
