add_test(NAME "install: the installed program runs from where it was put" COMMAND ${CMAKE_COMMAND}
  -DBUILT=${PROJECT_BINARY_DIR} -DPREFIX=${PROJECT_BINARY_DIR}/test-install
  -P ${CMAKE_CURRENT_SOURCE_DIR}/install/installed.cmake)
set_tests_properties("install: the installed program runs from where it was put" PROPERTIES TIMEOUT ${longest_s}
  ENVIRONMENT ${without_leak_check})
