#include "viewer/page/page.h"

#include <utility>

#include "geometry/base/message.h"
#include "models/files/made_by.h"
#include "viewer/page/html.h"
#include "viewer/page/packed.h"
#include "viewer/page/page_data.h"
#include "viewer/page/page_text.h"
#include "viewer/stage/scene/field_shown.h"
#include "viewer/words/error.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

namespace {

/// JSON as it may stand in a script element: nothing in it ends the element or begins a comment.
std::string json_in_html(const nlohmann::ordered_json& json) {
  std::string out;
  for (const char c : json.dump())
    if (c == '<')
      out += "\\u003c";
    else
      out += c;
  return out;
}

/// A bundle may not end its own element either; ours does not, so one that does is damaged.
const std::string& sound(const std::string& script) {
  if (script.find("</script") != std::string::npos || script.find("<!--") != std::string::npos)
    throw ViewerError(geometry::Message::of(
        "What a page for a browser is made of is damaged; run scripts/build release page_parts, and try again."));
  return script;
}

std::string block(const char* id, const std::string& text) {
  return text.empty() ? ""
                      : std::string("<script type=\"text/plain\" id=\"") + id + "\">" + text + "</script>\n";
}

/// No way out: scripts and styles only as they stand here, no connection of any kind.
std::string policy(const PageParts& parts) {
  return "default-src 'none'; script-src " + policy_source(parts.script) + " 'wasm-unsafe-eval'; style-src " +
         policy_source(parts.look) + "; worker-src blob:; img-src data:; base-uri 'none'; form-action 'none'";
}

std::vector<PageScene> scenes_for(const HeadOfPage& head, Face face) {
  const geometry::Case& c = head.file.the_case;
  if (face == Face::technician) return technician_scenes(c, head.plan);
  if (face == Face::class_room) return lesson_scenes(c, head.plan);
  const auto& brain = head.loaded.cortex;
  const bool under = brain && head.plan.treatment.cortex;
  return patient_scenes(
      head.plan, under ? brain : nullptr,
      under ? field_under(head.loaded.head, brain.get(), c.coil.model, head.plan.treatment) : nullptr);
}

}  // namespace

bool shows_a_person(const models::CaseFile& case_file) {
  return case_file.head.kind != models::HeadKind::generic;
}

std::string page_html(const models::CaseFile& case_file, const models::LoadedHead& loaded,
                      const geometry::Plan& plan, Face face, PageHead head, const PageParts& parts,
                      const models::Progress& progress) {
  const HeadOfPage of_page = head_of_page(case_file, loaded, plan, head, progress);
  if (progress) progress(geometry::Message::of("Drawing the page"), 0);
  const std::vector<PageDrawn> scenes = drawn(of_page, scenes_for(of_page, face));
  const PageBodies bodies = page_bodies(of_page, scenes);
  const nlohmann::ordered_json data = page_data(of_page, scenes, face, parts.patterns);
  const bool live = face != Face::patient && of_page.for_kernel;
  std::string out =
      "<!DOCTYPE html>\n<html lang=\"" + words(Words::tr("en", "this language, by ISO 639-1")) +
      "\">\n<head>\n<meta charset=\"utf-8\">\n<meta http-equiv=\"Content-Security-Policy\" content=\"" +
      escaped(policy(parts)) + "\">\n<meta name=\"generator\" content=\"" + models::made_by() +
      "\">\n<meta name=\"viewport\" "
      "content=\"width=device-width, initial-scale=1\">\n<title>" +
      escaped(page_title(of_page, face)) + "</title>\n<style>" + parts.look + "</style>\n</head>\n";
  out += page_body(of_page, scenes, face, parts.licences);
  out += "<script type=\"application/json\" id=\"data\">" + json_in_html(data) + "</script>\n";
  out += block("skin", packed(bodies.skin));
  if (!bodies.brain.empty())
    out += block("brain", packed(bodies.brain)) + block("light", packed(bodies.brain_light));
  if (live) out += block("kernel", packed(parts.kernel)) + block("worker", sound(parts.worker));
  out += "<script>" + sound(parts.script) + "</script>\n</body>\n</html>\n";
  return out;
}

}  // namespace scalpmark::viewer
