/* A page as it is exported: drawings laid out each at its own scale, standing on one sheet of paper. */
#pragma once

#include "paint_cairo.h"

typedef struct
{
  const RwLayout *layout;
  RwPoint         origin; /* of the drawing: mm from the upper left corner, y down */
} RwPagePart;

typedef struct
{
  double            width, height; /* mm */
  const char       *title;
  const RwPagePart *parts;
  int               count;
} RwPage;
