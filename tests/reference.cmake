# Checks against the outside world: CGAL's exact geodesics and other published results. Test-only dependencies.
# CGAL's geodesics are templates over our own choice of number type (double), so its GMP support is not needed.
set(CGAL_DISABLE_GMP ON)
set(CGAL_DO_NOT_WARN_ABOUT_CMAKE_BUILD_TYPE ON)
find_package(CGAL REQUIRED)
get_target_property(cgal_includes CGAL::CGAL INTERFACE_INCLUDE_DIRECTORIES)

scalpmark_test(reference scalpmark::geometry scalpmark::models CGAL::CGAL)
if(TARGET test_reference)
  if(cgal_includes)
    target_include_directories(test_reference SYSTEM PRIVATE ${cgal_includes})
  endif()
  target_compile_definitions(test_reference PRIVATE CGAL_DISABLE_GMP CGAL_NDEBUG)
endif()
