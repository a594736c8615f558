# The page for a browser: its kernel in WebAssembly against the program, and the page itself in Debian's Chromium, driven
# by Playwright. They need the parts of a page (scripts/build release page_parts, which scripts/test does) and fail, saying
# so, without.
find_program(NODE NAMES node nodejs)
add_executable(page_answers page/page_answers.cpp)
target_link_libraries(page_answers PRIVATE scalpmark::viewer scalpmark_flags)
# The longest tests there are: begun first, or at the end of a run the other cores wait for them.
function(scalpmark_page_test name file)
  add_test(NAME "page: ${name}" COMMAND ${NODE} ${CMAKE_CURRENT_SOURCE_DIR}/page/${file}
    ${PROJECT_SOURCE_DIR} ${PROJECT_BINARY_DIR})
  set_tests_properties("page: ${name}" PROPERTIES TIMEOUT 1200 COST 300 ENVIRONMENT
    "${without_leak_check};QT_QPA_PLATFORM=offscreen")
endfunction()
if(NODE)
  scalpmark_page_test("the kernel in WebAssembly answers as the program does" kernel_test.mjs)
  scalpmark_page_test("the coil is seen whole from every side, in a window of any shape" sight_test.mjs)
  scalpmark_page_test("a page in a browser does what it says" browser_test.mjs)
else()
  message(WARNING "No node: the tests of the page are left out; run scripts/setup")
endif()
