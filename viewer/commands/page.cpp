#include "viewer/page/page.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <memory>
#include <optional>

#include "geometry/base/message.h"
#include "models/files/safe_file.h"
#include "viewer/commands/commands.h"
#include "viewer/commands/options.h"
#include "viewer/commands/output.h"
#include "viewer/commands/slow_progress.h"
#include "viewer/commands/solved_case.h"
#include "viewer/words/in_language.h"

namespace scalpmark::viewer {

namespace {

struct PageAsked {
  std::string in;
  Output out;
  Face face = Face::technician;
  std::optional<PageHead> head;
  Brain brain = Brain::wanted;
  std::string language = "en";
};

template <class Choices>
std::string names_of(const Choices& choices) {
  std::vector<std::string> names;
  for (const auto choice : choices) names.emplace_back(name_of(choice));
  return list_of(names);
}

template <class Choices>
typename Choices::value_type chosen(const std::string& option, const std::string& text,
                                    const Choices& choices) {
  const auto found = std::find_if(choices.begin(), choices.end(), [&](auto c) { return name_of(c) == text; });
  if (found == choices.end())
    throw UsageError(option + " is \"" + text + "\"; choose one of " + names_of(choices) + ".");
  return *found;
}

void write(const PageAsked& asked) {
  check_output(asked.out, "scalpmark-html", asked.in);
  const PageParts parts = read_page_parts();
  if (!asked.head && shows_a_person(models::read_case(asked.in)))
    throw UsageError(
        "This case's head is a scan, which shows a person's face: say which head the page is to have with --head "
        "own (that face), generic (a drawn head, scaled to the same tapes) or scalp (what lies above brow and ears).");
  const InLanguage texts(asked.language);
  const models::Progress progress = SlowProgress();
  // Only a patient's page shows a brain.
  const SolvedCase solved =
      solve_case(asked.in, progress, asked.face == Face::patient ? asked.brain : Brain::left_out);
  const std::string page = page_html(solved.file, solved.loaded, solved.plan, asked.face,
                                     asked.head.value_or(PageHead::own), parts, progress);
  if (asked.out.to_stdout())
    write_to_stdout(page);
  else
    models::write_whole(asked.out.file, page);
}

}  // namespace

void add_page(CLI::App& program) {
  auto* command = program.add_subcommand(
      "page",
      "Write a case as one file that any browser opens from disk: the head to turn, the coil to move");
  const auto asked = std::make_shared<PageAsked>();
  add_case(*command, asked->in);
  add_output(*command, asked->out, "Where the page goes; - for the standard output")
      ->required()
      ->type_name("FILE.html");
  command
      ->add_option_function<std::string>(
          "--for", [asked](const std::string& text) { asked->face = chosen("--for", text, all_faces); },
          "Whom it is for: " + names_of(all_faces) + "; without it, technician. A patient's holds no numbers")
      ->type_name("WHOM");
  command
      ->add_option_function<std::string>(
          "--head",
          [asked](const std::string& text) { asked->head = chosen("--head", text, all_page_heads); },
          "Of a case whose head is a scan, which shows a face, the head in the page: " +
              names_of(all_page_heads))
      ->type_name("HEAD");
  command
      ->add_option("--language", asked->language,
                   "Of what is said in the page, such as de; without it, English")
      ->type_name("LANGUAGE");
  add_lengths(*command);
  add_no_brain(*command, asked->brain);
  command->callback([asked] { write(*asked); });
}

}  // namespace scalpmark::viewer
