#include "viewer/window/steps/treat_step.h"

#include <QCompleter>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>

#include "geometry/base/ranges.h"
#include "geometry/head/landmarks.h"

namespace scalpmark::window {

using viewer::Thing;

namespace {

// Half way between two positions is shown, but it is no position a case can name.
bool can_be_chosen(const geometry::TreatmentAlternative& site) {
  return site.rule == geometry::TreatmentRule::forward || geometry::canonical_label(site.label).has_value();
}

void choose(models::CaseFile& kept, const geometry::TreatmentAlternative& site) {
  kept.entered.treatment.rule = site.rule;
  if (site.rule == geometry::TreatmentRule::forward)
    kept.entered.treatment.distance_mm = site.distance_mm;
  else
    kept.entered.treatment.label = site.label;
}

}  // namespace

TreatStep::TreatStep(Session& session, QWidget* parent) : Step(4, tr("Treat"), parent), session_(session) {
  fields()->addWidget(new QLabel(tr("The node that answered (the hotspot)")));
  hotspot_ = new NodePad(tr("The hotspot is"));
  fields()->addWidget(hotspot_);
  rule_ = new Choice(tr("The treatment site is"),
                     {{tr("forward of it"), tr("A tape forward from the hotspot, parallel to the midline")},
                      {tr("a landmark"), tr("A position of the 10-20, 10-10 or 10-5 system")}});
  fields()->addWidget(rule_);
  distance_ = new LengthField(tr("Forward from the hotspot"), geometry::ranges::distance_mm);
  distance_->on_commit([this](std::optional<double> mm) {
    set_problem({});
    return session_.change(tr("Treatment distance"), [&](models::CaseFile& kept) {
      kept.entered.treatment.rule = geometry::TreatmentRule::forward;
      kept.entered.treatment.distance_mm = *mm;
    });
  });
  fields()->addWidget(distance_);
  add_label();
  add_alternatives();
  gaps_ = new GapPanel;
  fields()->addWidget(gaps_);

  connect_fields();
}

void TreatStep::add_label() {
  label_row_ = new QWidget;
  auto* row = new QHBoxLayout(label_row_);
  row->setContentsMargins(0, 0, 0, 0);
  auto* name = new QLabel(tr("Landmark"));
  label_ = new QLineEdit;
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
  connect(label_, &QLineEdit::editingFinished, this, &TreatStep::take_label);
  connect(completer, qOverload<const QString&>(&QCompleter::activated), this, [this](const QString& chosen) {
    label_->setText(chosen);
    label_->setModified(true);
    take_label();
  });
}

void TreatStep::add_alternatives() {
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

void TreatStep::connect_fields() {
  connect(hotspot_, &NodePad::chosen, this, [this](int row_, int column) {
    set_problem(session_.change(tr("Hotspot"), [&](models::CaseFile& kept) {
      kept.entered.hotspot = {row_, column};
    }));
    show_case();
  });
  connect(rule_, &Choice::picked, this, [this](int index) {
    const QString problem = session_.change(tr("Treatment rule"), [&](models::CaseFile& kept) {
      geometry::TreatmentSettings& treatment = kept.entered.treatment;
      treatment.rule = index == 0 ? geometry::TreatmentRule::forward : geometry::TreatmentRule::landmark;
      // A landmark has to be named; the one used most is a start.
      if (index == 1 && treatment.label.empty())
        treatment.label = kept.entered.side == geometry::Side::left ? "F3" : "F4";
    });
    set_problem(problem);
    show_case();
  });
  connect(alternatives_, &QTableWidget::itemActivated, this, [this](const QTableWidgetItem* item) {
    if (!session_.is_ready()) return;
    const auto index = item->data(Qt::UserRole).toULongLong();
    const auto& sites = session_.plan().treatment_alternatives;
    if (index >= sites.size() || !can_be_chosen(sites[index])) return;
    const geometry::TreatmentAlternative site = sites[index];
    set_problem(session_.change(tr("Treatment site"), [&](models::CaseFile& kept) { choose(kept, site); }));
  });
}

void TreatStep::take_label() {
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
  label_->setModified(false);
  const QString problem = session_.change(tr("Treatment landmark"), [&](models::CaseFile& kept) {
    kept.entered.treatment.rule = geometry::TreatmentRule::landmark;
    kept.entered.treatment.label = *name;
  });
  set_problem(problem);
  if (!problem.isEmpty()) label_->setModified(true);
}

void TreatStep::set_unit(LengthUnit unit) {
  unit_ = unit;
  distance_->set_unit(unit);
  show_case();
}

void TreatStep::show_case() {
  const geometry::Case& c = session_.kept().entered;
  const bool forward = c.treatment.rule == geometry::TreatmentRule::forward;
  hotspot_->set_side(c.side);
  hotspot_->choose(c.hotspot);
  rule_->choose(forward ? 0 : 1);
  distance_->setVisible(forward);
  distance_->set_value(c.treatment.distance_mm);
  label_row_->setVisible(!forward);
  if (!label_->isModified()) label_->setText(QString::fromStdString(c.treatment.label));
  set_hint(
      forward
          ? tr("Ring the node that gives a steady twitch of the hand. From its pulse point tape %1 forward, "
               "parallel to the midline: the treatment site.")
                .arg(length_with_unit(c.treatment.distance_mm, unit_))
          : tr("Ring the node that gives a steady twitch of the hand. The treatment site is the landmark %1.")
                .arg(QString::fromStdString(c.treatment.label)));
  set_summary(forward ? tr("%1 forward").arg(length_with_unit(c.treatment.distance_mm, unit_))
                      : QString::fromStdString(c.treatment.label));
  if (!session_.is_ready()) return;

  const auto& sites = session_.plan().treatment_alternatives;
  alternatives_->setRowCount(static_cast<int>(sites.size()));
  for (std::size_t i = 0; i < sites.size(); ++i) {
    const auto& site = sites[i];
    const QString name =
        site.rule == geometry::TreatmentRule::forward
            ? tr("%1 forward").arg(length_with_unit(site.distance_mm, unit_))
        : can_be_chosen(site)
            ? QString::fromStdString(site.label)
            : tr("half way %1").arg(QString::fromStdString(site.label).replace(QLatin1Char('-'), tr(" to ")));
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

StageContent TreatStep::stage_content(const HeldCoil& coil) const {
  return content_with(
      {Thing::hotspot, Thing::treatment, Thing::alternatives, Thing::coil, Thing::angle, Thing::edge_marks},
      coil);
}

}  // namespace scalpmark::window
