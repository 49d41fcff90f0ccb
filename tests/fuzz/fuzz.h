/* The one entry that a fuzz target has, with libFuzzer or with the plain driver. */
#pragma once

#include <glib.h>

int LLVMFuzzerTestOneInput (const guint8 *data, size_t size);
