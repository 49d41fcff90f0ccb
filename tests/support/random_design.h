/* Designs drawn at random, from the ranges in the table of parameters; the limits of the checks stay as given.
 * They use g_test_rand_*(), so a failed run is repeated by the seed that it prints. */
#pragma once

#include "table/param.h"

/* Every parameter anywhere in its range, ends included now and then: what an engine must survive. */
void random_design (RwDesign *design);

/* The built-in build with some numbers moved by up to a fifth: what an engine should mostly make sense of.
 * Strings, lists and choices stay. */
void random_design_near (RwDesign *design, int changes);
