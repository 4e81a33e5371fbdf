# A compiler here takes up to 1.5 GB (long field tables, JSON). No more of them at a time than memory allows, however
# many cores there are; two links at most.
cmake_host_system_information(RESULT MEMORY_MB QUERY TOTAL_PHYSICAL_MEMORY)
math(EXPR COMPILERS "${MEMORY_MB} / 1500")
if(COMPILERS LESS 1)
  set(COMPILERS 1)
endif()
set_property(GLOBAL PROPERTY JOB_POOLS compile=${COMPILERS} link=2)
set(CMAKE_JOB_POOL_COMPILE compile)
set(CMAKE_JOB_POOL_LINK link)
