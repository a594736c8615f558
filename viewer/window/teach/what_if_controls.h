#pragma once

#include <QButtonGroup>
#include <QCheckBox>
#include <QLabel>
#include <QRadioButton>
#include <QWidget>
#include <array>
#include <optional>
#include <vector>

#include "geometry/plan/case.h"
#include "viewer/teach/mistake.h"
#include "viewer/window/fields/choice.h"
#include "viewer/window/fields/number_field.h"

namespace scalpmark::window {

/// Chooses one thing to do wrong, and by how much; kept, it lets a second be chosen beside it. Only says what
/// was chosen; others work out what comes of it.
class WhatIfControls : public QWidget {
  Q_OBJECT
public:
  enum Kind { nothing, vertex, tape, turned, rule, cap, aside, off };

  explicit WhatIfControls(QWidget* parent = nullptr);

  /// The one kept and the one chosen; empty while nothing is done wrong.
  [[nodiscard]] std::vector<viewer::Mistake> mistakes() const;
  /// The one chosen; nothing, too, while a second is still to be chosen.
  [[nodiscard]] Kind kind() const {
    return kinds_->checkedId() < 0 ? nothing : static_cast<Kind>(kinds_->checkedId());
  }
  [[nodiscard]] const std::optional<viewer::Mistake>& kept() const { return kept_; }
  /// Says which one is kept.
  void show_kept(const QString& in_words);
  /// What lengths are typed in.
  void set_unit(LengthUnit unit);
  /// Back to nothing done wrong, without a word.
  void clear();
  /// What this case leaves to be done wrong: no tape to a treatment site that is a landmark, no rule that is
  /// the case's own, no look where a coil is not laid by one.
  void show_case(const geometry::Case& the_case);
  /// Why the mistake chosen cannot be shown, or nothing.
  void set_problem(const QString& sentence);
  [[nodiscard]] QString problem() const { return problem_->text(); }

  [[nodiscard]] QRadioButton* button(Kind kind) const;
  /// Keeps the one chosen, for a second; seen while there is one to keep.
  [[nodiscard]] QCheckBox* keep() const { return keep_; }
  [[nodiscard]] QString kept_text() const { return kept_label_->text(); }
  [[nodiscard]] LengthField* vertex_off() const { return vertex_off_; }
  [[nodiscard]] Choice* vertex_way() const { return vertex_way_; }
  [[nodiscard]] LengthField* tape_off() const { return tape_off_; }
  [[nodiscard]] Choice* tape_way() const { return tape_way_; }
  [[nodiscard]] Choice* which_tape() const { return which_tape_; }
  [[nodiscard]] AngleField* turned_by() const { return turned_by_; }
  [[nodiscard]] Choice* turned_way() const { return turned_way_; }
  [[nodiscard]] Choice* laid_by() const { return laid_by_; }
  [[nodiscard]] LengthField* cap_slid() const { return cap_slid_; }
  [[nodiscard]] AngleField* cap_turned() const { return cap_turned_; }
  /// Slid forward, back, to the patient's left, right; turned to the left, right.
  [[nodiscard]] Choice* cap_way() const { return cap_way_; }
  [[nodiscard]] AngleField* aside_by() const { return aside_by_; }
  [[nodiscard]] Choice* aside_way() const { return aside_way_; }
  /// About its edge mark, or about its centre.
  [[nodiscard]] Choice* turned_about() const { return turned_about_; }
  /// More gap, the left wing lifted, the right one.
  [[nodiscard]] Choice* off_how() const { return off_how_; }
  [[nodiscard]] LengthField* off_gap() const { return off_gap_; }
  [[nodiscard]] AngleField* off_by() const { return off_by_; }

signals:
  void changed();

private:
  void make_fields();
  /// A mistake to choose, and what it is told by.
  void add_kind(Kind kind, const QString& text, const QString& tooltip, const std::vector<QWidget*>& fields);
  void choose_usual();
  void connect_fields();
  void show_kind();
  [[nodiscard]] std::optional<viewer::Mistake> mistake() const;
  [[nodiscard]] geometry::CapMove cap_move() const;
  void keep_or_drop(bool keep);
  void drop_kept();
  /// What can be done wrong in the case beside what is kept.
  void enable_kinds();

  QButtonGroup* kinds_;
  std::array<QWidget*, 8> details_{};
  LengthField *vertex_off_, *tape_off_, *cap_slid_, *off_gap_;
  AngleField *turned_by_, *cap_turned_, *aside_by_, *off_by_;
  Choice *vertex_way_, *which_tape_, *tape_way_, *turned_way_, *laid_by_, *cap_way_, *aside_way_,
      *turned_about_, *off_how_;
  QLabel *problem_, *kept_label_;
  QCheckBox* keep_;
  std::optional<viewer::Mistake> kept_;
  geometry::MarkRule case_rule_ = geometry::MarkRule::drop;
};

}  // namespace scalpmark::window
