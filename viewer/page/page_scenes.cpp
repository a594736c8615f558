#include "viewer/page/page_scenes.h"

#include "viewer/teach/explained.h"
#include "viewer/words/numbers.h"
#include "viewer/words/patient_words.h"
#include "viewer/words/shift_words.h"
#include "viewer/words/site_words.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using geometry::Placement;

namespace {

constexpr double search_across_mm = 230;  // the whole coil over its grid

View from_the_side(const Placement& coil) {
  return geometry::side_of(coil) == geometry::Side::left ? View::left : View::right;
}

PageScene treatment_scene(const geometry::Case& c, const geometry::Plan& plan) {
  PageScene s;
  s.title = words(Words::tr("Treatment"));
  s.text = words(geometry::site_is_open(c) ? Words::tr("Site %1.") : Words::tr("Treatment site: %1."),
                 {site_in_words(c)});
  if (const std::string shift = shift_sentence(plan.treatment, c.treatment.drawn_by, c.coil); !shift.empty())
    s.text += " " + shift;
  s.shown.things = {Thing::skin,      Thing::landmarks, Thing::tapes, Thing::hotspot,
                    Thing::treatment, Thing::coil,      Thing::angle, Thing::edge_marks,
                    Thing::wanted,    Thing::labels,    Thing::legend};
  s.shown.landmarks = std::set<std::string>{"Nz", "Iz", "Cz"};
  s.shown.lines = std::set<std::string>{"midline", "coronal", "treatment"};
  s.shown.names_all = false;
  s.gaze = gaze(from_the_side(plan.treatment), plan.axes, plan.treatment);
  return s;
}

PageScene search_scene(const geometry::Case& c, const geometry::Plan& plan) {
  PageScene s;
  s.title = words(Words::tr("Search"));
  s.text = words(
      Words::tr("From the vertex %1 toward the ear, then %2 forward: the start. Nine spots, %3 apart."),
      {tape_length(c.search.lateral_mm), tape_length(c.search.anterior_mm), tape_length(c.search.pitch_mm)});
  if (const std::string shift = shift_sentence(plan.start, c.search.drawn_by, c.coil); !shift.empty())
    s.text += " " + shift;
  s.shown.things = {Thing::skin,  Thing::landmarks,  Thing::tapes,  Thing::grid,   Thing::start, Thing::coil,
                    Thing::angle, Thing::edge_marks, Thing::wanted, Thing::labels, Thing::legend};
  s.shown.landmarks = std::set<std::string>{"Nz", "Iz", "Cz"};
  s.shown.lines = std::set<std::string>{"midline", "coronal", "lateral", "anterior"};
  s.shown.names_all = false;
  s.shown.coil_on = CoilOn::start;
  s.gaze = gaze(View::square_on, plan.axes, plan.start);
  s.close = CloseLook{plan.start.pulse, search_across_mm};
  return s;
}

PageScene landmarks_scene(const geometry::Plan& plan) {
  PageScene s;
  s.title = words(Words::tr("Landmarks"));
  s.text =
      words(Words::tr("Nasion to inion %1, tragus to tragus %2, both over the vertex; around the head %3."),
            {tape_length(plan.tapes.nasion_inion_mm), tape_length(plan.tapes.tragus_tragus_mm),
             tape_length(plan.tapes.circumference_mm)});
  s.shown.things = {Thing::skin,      Thing::landmarks, Thing::tapes, Thing::hotspot,
                    Thing::treatment, Thing::labels,    Thing::legend};
  s.shown.lines = std::set<std::string>{"midline", "coronal", "circumference"};
  const View from =
      geometry::side_of(plan.treatment) == geometry::Side::left ? View::front_left : View::front_right;
  s.gaze = gaze(from, plan.axes, plan.treatment);
  return s;
}

}  // namespace

std::vector<PageScene> technician_scenes(const geometry::Case& the_case, const geometry::Plan& plan) {
  return {treatment_scene(the_case, plan), search_scene(the_case, plan), landmarks_scene(plan)};
}

std::vector<PageScene> lesson_scenes(const geometry::Case& the_case, const geometry::Plan& plan) {
  std::vector<PageScene> scenes;
  for (const LessonStep& step : lesson(the_case, plan)) {
    PageScene s{step.title,
                step.caption,
                step.why,
                step.shown,
                gaze(step.view, plan.axes, placement_shown(plan, step.shown)),
                step.close};
    for (const PencilMark& mark : step.pencil) {
      Note note;
      note.shape = Shape::bar;
      note.role = Role::construction;
      note.at = mark.at;
      note.along = mark.along;
      note.text = mark.text;
      s.shown.notes.push_back(note);
    }
    scenes.push_back(std::move(s));
  }
  return scenes;
}

std::vector<PageScene> patient_scenes(const geometry::Plan& plan,
                                      const std::shared_ptr<const geometry::Cortex>& brain,
                                      const std::shared_ptr<const geometry::CoilField>& field) {
  Shown shown = explained(plan, brain);
  shown.field = field;
  std::optional<double> patch_cm2;
  if (brain && field) patch_cm2 = field->map.half.area_cm2;
  const View from =
      geometry::side_of(plan.treatment) == geometry::Side::left ? View::front_left : View::front_right;
  std::vector<PageScene> scenes;
  for (const PatientPage& page : patient_pages(brain != nullptr, patch_cm2))
    scenes.push_back({page.heading, page.text, "", shown, gaze(from, plan.axes, plan.treatment), {}});
  return scenes;
}

}  // namespace scalpmark::viewer
