/* What a fuzz target has, with libFuzzer or with the plain driver: its beginning, and the one entry. */
#pragma once

#include <glib.h>

int LLVMFuzzerInitialize   (int *argc, char ***argv);
int LLVMFuzzerTestOneInput (const guint8 *data, size_t size);
