/* What a measured string height says of the neck, in a sentence: see making/backwards.h. */
#pragma once

#include "document/document.h"

/* NULL where none is measured, or no neck explains it.  New. */
char *rw_backwards_words (RwDocument *document);
