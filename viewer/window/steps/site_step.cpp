#include "viewer/window/steps/site_step.h"

#include <QCompleter>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>

#include "geometry/base/ranges.h"
#include "geometry/head/landmark_names.h"
#include "geometry/head/landmarks.h"
#include "viewer/window/fields/text_entry.h"
#include "viewer/words/answer_words.h"
#include "viewer/words/shift_words.h"
#include "viewer/words/site_words.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

using viewer::Thing;

namespace {

// Half way between two positions is shown, but it is no position a case can name.
bool can_be_chosen(const geometry::TreatmentAlternative& site) {
  return site.rule == geometry::TreatmentRule::forward || geometry::canonical_label(site.label).has_value();
}

void choose(models::CaseFile& case_file, const geometry::TreatmentAlternative& site) {
  case_file.the_case.treatment.rule = site.rule;
  if (site.rule == geometry::TreatmentRule::forward)
    case_file.the_case.treatment.distance_mm = site.distance_mm;
  else
    case_file.the_case.treatment.label = site.label;
}

}  // namespace

SiteStep::SiteStep(Session& session, QWidget* parent) : Step(5, tr("Site"), parent), session_(session) {
  hotspot_heading_ = new QLabel;
  hotspot_heading_->setObjectName("strong");
  hotspot_heading_->setWordWrap(true);
  fields()->addWidget(hotspot_heading_);
  hotspot_ = new SpotPad(tr("The hotspot is"));
  fields()->addWidget(hotspot_);
  rule_ = new Choice(tr("The treatment site is"),
                     {{tr("forward of it"), tr("A tape forward from the hotspot, parallel to the midline")},
                      {tr("a landmark"), tr("A position of the 10-20, 10-10 or 10-5 system")}});
  fields()->addWidget(rule_);
  distance_ = new LengthField(tr("Forward from the hotspot"), geometry::ranges::distance_mm);
  distance_->on_commit([this](std::optional<double> mm) {
    set_problem({});
    return session_.change(tr("Treatment distance"), [&](models::CaseFile& case_file) {
      case_file.the_case.treatment.rule = geometry::TreatmentRule::forward;
      case_file.the_case.treatment.distance_mm = *mm;
    });
  });
  fields()->addWidget(distance_);
  add_label();
  drawn_by_ =
      new Choice(tr("Its edge mark is drawn by"),
                 {{tr("tape"), tr("A tape of the centre-to-edge length along the skin from the site")},
                  {tr("drop"), tr("Looking straight down past the edge of the coil on the site")},
                  {tr("nearest"), tr("The skin nearest to the edge of the coil on the site")}});
  fields()->addWidget(drawn_by_);
  shift_note_ = new QLabel;
  shift_note_->setWordWrap(true);
  fields()->addWidget(shift_note_);
  add_alternatives();
  gaps_ = new GapPanel;
  fields()->addWidget(gaps_);

  connect_fields();
}

void SiteStep::add_label() {
  label_row_ = new QWidget;
  auto* row = new QHBoxLayout(label_row_);
  row->setContentsMargins(0, 0, 0, 0);
  auto* name = new QLabel(tr("Landmark"));
  label_ = new TextEntry;
  label_->setMaxLength(12);
  label_->setAccessibleName(tr("Landmark of the treatment site"));
  label_->setToolTip(tr("A label of the 10-5 system, such as F3"));
  name->setBuddy(label_);
  QStringList labels;
  for (const std::string& each : geometry::landmark_labels(geometry::LandmarkSystem::ten_five))
    labels << QString::fromStdString(each);
  auto* completer = new QCompleter(labels, label_);
  completer->setCaseSensitivity(Qt::CaseInsensitive);
  label_->setCompleter(completer);
  row->addWidget(name, 1);
  row->addWidget(label_);
  fields()->addWidget(label_row_);
  other_side_ = new QPushButton(tr("Treat on the other side"));
  other_side_->hide();
  fields()->addWidget(other_side_);
  connect(other_side_, &QPushButton::clicked, this, [this] {
    if (!waiting_.empty()) choose_label(waiting_);
  });
  connect(label_, &QLineEdit::textEdited, this, [this] {
    if (waiting_.empty()) return;
    waiting_.clear();
    other_side_->hide();
    set_problem({});
  });
  connect(label_, &QLineEdit::returnPressed, this, [this] { take_label(true); });
  // Leaving the field takes what was typed, but confirms nothing.
  connect(label_, &QLineEdit::editingFinished, this, [this] { take_label(false); });
  connect(completer, qOverload<const QString&>(&QCompleter::activated), this, [this](const QString& chosen) {
    label_->setText(chosen);
    label_->setModified(true);
    take_label(false);
  });
}

void SiteStep::add_alternatives() {
  auto* others = new QLabel(tr("Other sites, and how far they lie from this one"));
  others->setWordWrap(true);
  fields()->addWidget(others);
  alternatives_ = new QTableWidget(0, 2);
  alternatives_->setAccessibleName(tr("Other sites; Enter chooses one"));
  alternatives_->setHorizontalHeaderLabels({tr("Site"), tr("Away")});
  alternatives_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
  alternatives_->horizontalHeader()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
  alternatives_->horizontalHeader()->hide();
  alternatives_->verticalHeader()->hide();
  alternatives_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  alternatives_->setSelectionBehavior(QAbstractItemView::SelectRows);
  alternatives_->setSelectionMode(QAbstractItemView::SingleSelection);
  alternatives_->setShowGrid(false);
  alternatives_->setTabKeyNavigation(false);
  alternatives_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  alternatives_->setToolTip(tr("Double-click, or Enter, makes it the treatment site."));
  fields()->addWidget(alternatives_);
}

void SiteStep::connect_fields() {
  connect(hotspot_, &SpotPad::chosen, this, [this](int row_, int column) {
    set_problem(session_.change(tr("Hotspot"), [&](models::CaseFile& case_file) {
      geometry::take_hotspot(case_file.the_case, {row_, column});
    }));
    show_case();
  });
  connect(rule_, &Choice::picked, this, [this](int index) {
    const QString problem = session_.change(tr("Treatment rule"), [&](models::CaseFile& case_file) {
      geometry::TreatmentSettings& treatment = case_file.the_case.treatment;
      treatment.rule = index == 0 ? geometry::TreatmentRule::forward : geometry::TreatmentRule::landmark;
      // A landmark has to be named; the one used most is a start.
      if (index == 1 && treatment.label.empty())
        treatment.label = case_file.the_case.side == geometry::Side::left ? "F3" : "F4";
    });
    set_problem(problem);
    show_case();
  });
  connect(drawn_by_, &Choice::picked, this, [this](int index) {
    set_problem(session_.change(tr("Rule for drawing"), [index](models::CaseFile& case_file) {
      case_file.the_case.treatment.drawn_by = geometry::all_mark_rules[static_cast<size_t>(index)];
    }));
    show_case();
  });
  connect(alternatives_, &QTableWidget::itemSelectionChanged, this, &SiteStep::other_site_named);
  connect(alternatives_, &QTableWidget::itemActivated, this, [this](const QTableWidgetItem* item) {
    if (!session_.is_ready()) return;
    const auto index = item->data(Qt::UserRole).toULongLong();
    const auto& sites = session_.plan().treatment_alternatives;
    if (index >= sites.size() || !can_be_chosen(sites[index])) return;
    const geometry::TreatmentAlternative site = sites[index];
    set_problem(
        session_.change(tr("Treatment site"), [&](models::CaseFile& case_file) { choose(case_file, site); }));
  });
}

void SiteStep::take_label(bool by_key) {
  if (!label_->isModified()) return;
  const QString typed = label_->text().trimmed();
  const auto name = geometry::canonical_label(typed.toStdString());
  if (!name) {
    set_problem(typed.isEmpty()
                    ? tr("Type the landmark's label, such as F3.")
                    : tr("There is no landmark \u201c%1\u201d in the 10-5 system; type a label such as F3.")
                          .arg(typed));
    return;
  }
  const auto side = geometry::side_of_label(*name);
  const geometry::Case& c = session_.case_file().the_case;
  const bool already = c.treatment.rule == geometry::TreatmentRule::landmark && c.treatment.label == *name;
  if (side && *side != c.side && !already && !(by_key && waiting_ == *name)) {
    if (waiting_ != *name) ask_about_side(*name);
    return;
  }
  choose_label(*name);
}

// A landmark across the head is said before it holds: the coil would lie where nobody looks.
void SiteStep::ask_about_side(const std::string& label) {
  waiting_ = label;
  const bool left = session_.case_file().the_case.side == geometry::Side::left;
  const QString name = QString::fromStdString(label), same = QString::fromStdString(geometry::label_on_side(
                                                          label, session_.case_file().the_case.side));
  set_problem(
      (left ? tr("%1 lies on the patient's right, but the search is on the left. For the right side press "
                 "Enter again; on the left it is %2.")
            : tr("%1 lies on the patient's left, but the search is on the right. For the left side press "
                 "Enter again; on the right it is %2."))
          .arg(name, same));
  other_side_->setText(left ? tr("Treat on the right, at %1").arg(name)
                            : tr("Treat on the left, at %1").arg(name));
  other_side_->show();
}

// By value: what is waiting is forgotten before the label is used.
void SiteStep::choose_label(std::string label) {
  label_->setModified(false);
  waiting_.clear();
  other_side_->hide();
  const QString problem = session_.change(tr("Treatment landmark"), [&](models::CaseFile& case_file) {
    case_file.the_case.treatment.rule = geometry::TreatmentRule::landmark;
    case_file.the_case.treatment.label = label;
  });
  set_problem(problem);
  if (!problem.isEmpty()) label_->setModified(true);
}

void SiteStep::set_unit(LengthUnit unit) {
  unit_ = unit;
  distance_->set_unit(unit);
  show_case();
}

void SiteStep::show_case() {
  const geometry::Case& c = session_.case_file().the_case;
  const bool forward = c.treatment.rule == geometry::TreatmentRule::forward;
  hotspot_->set_side(c.side);
  const bool off_grid = c.hotspot_off_grid.is_given();
  const std::optional<geometry::GridPosition> hotspot =
      c.hotspot_awaited || off_grid ? std::nullopt : std::optional(c.hotspot);
  hotspot_->choose(hotspot);
  hotspot_->mark(hotspot);
  hotspot_heading_->setText(
      hotspot    ? tr("The spot that answered (the hotspot)")
      : off_grid ? tr("The hotspot lies between spots: %1. A spot takes its place.")
                       .arg(viewer::translated(viewer::off_grid_name(c.hotspot_off_grid)))
      : forward ? tr("The spot that answered: not found yet. The stage shows the site as it "
                     "would be if the middle spot answers.")
                : tr("The spot that answered: not found yet."));
  rule_->choose(forward ? 0 : 1);
  distance_->setVisible(forward);
  distance_->set_value(c.treatment.distance_mm);
  label_row_->setVisible(!forward);
  if (forward && !waiting_.empty()) {
    waiting_.clear();
    other_side_->hide();
    label_->setModified(false);
    set_problem({});
  }
  drawn_by_->choose(static_cast<int>(c.treatment.drawn_by));
  const QString site = QString::fromStdString(c.treatment.label);
  if (!label_->isModified() && label_->text() != site) label_->setText(site);
  set_hint(
      forward
          ? tr("Circle the spot that gives a steady twitch of the hand. From its pulse point tape %1 forward, "
               "parallel to the midline: the treatment site.")
                .arg(length_with_unit(c.treatment.distance_mm, unit_))
          : tr("Circle the spot that gives a steady twitch of the hand. The treatment site is the landmark %1.")
                .arg(QString::fromStdString(c.treatment.label)));
  set_summary(geometry::site_is_open(c) ? tr("hotspot not found yet")
              : forward ? tr("%1 forward").arg(length_with_unit(c.treatment.distance_mm, unit_))
                        : QString::fromStdString(c.treatment.label));
  if (!session_.is_ready()) return;
  const std::string shift = viewer::shift_sentence(session_.plan().treatment, c.treatment.drawn_by, c.coil);
  shift_note_->setText(QString::fromStdString(shift));
  shift_note_->setVisible(!shift.empty());

  const auto& sites = session_.plan().treatment_alternatives;
  alternatives_->setRowCount(static_cast<int>(sites.size()));
  for (std::size_t i = 0; i < sites.size(); ++i) {
    const auto& site = sites[i];
    const QString name = QString::fromStdString(viewer::other_site_in_short(site));
    const QString away = site.tape_from_treatment_mm < 0.5
                             ? tr("this one")
                             : length_with_unit(site.tape_from_treatment_mm, unit_);
    const auto row = static_cast<int>(i);
    for (int column = 0; column < 2; ++column) {
      auto* item = new QTableWidgetItem(column == 0 ? name : away);
      item->setData(Qt::UserRole, static_cast<qulonglong>(i));
      if (column == 1) item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
      if (!can_be_chosen(site)) item->setToolTip(tr("For comparison; it has no label of its own."));
      alternatives_->setItem(row, column, item);
    }
    alternatives_->setRowHeight(row, fontMetrics().height() + 6);
  }
  alternatives_->setFixedHeight(static_cast<int>(sites.size()) * (fontMetrics().height() + 6) + 4);
}

StageContent SiteStep::stage_content(const HeldCoil& coil) const {
  StageContent content = content_with({Thing::hotspot, Thing::treatment, Thing::alternatives, Thing::coil,
                                       Thing::angle, Thing::edge_marks, Thing::wanted},
                                      coil);
  content.shown.names_all = false;
  if (const auto chosen = alternatives_->selectedItems(); !chosen.isEmpty())
    content.shown.named_site = chosen.front()->data(Qt::UserRole).toULongLong();
  return content;
}

}  // namespace scalpmark::window
