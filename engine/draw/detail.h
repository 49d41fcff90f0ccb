/* A small picture of what one number measures: the part of a drawing where it is shown, with its own dimension and
 * no other; or the part that it belongs to, where no drawing shows the number itself. */
#pragma once

#include "drawing.h"

typedef struct
{
  RwSheet *sheet; /* the shapes of one view, and the subject's own lettering */
  RwBox    box;   /* where on it to look, sheet mm */
  GArray  *items; /* of int: what of it to mark */
} RwDetail;

/* The detail of a parameter or dimension; NULL where there is nothing to draw, as for a humidity. */
RwDetail *rw_detail_new  (RwSubject subject, const RwResult *result, RwStyle style);
void      rw_detail_free (RwDetail *detail);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwDetail, rw_detail_free)
