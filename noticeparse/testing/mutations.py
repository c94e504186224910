"""All mutations, by what they are put to."""

from __future__ import annotations

from noticeparse.testing.cases import Kind, Mutation
from noticeparse.testing.notice_mutations import NOTICE_MUTATIONS
from noticeparse.testing.position_mutations import POSITION_MUTATIONS
from noticeparse.testing.value_mutations import DEPTH_MUTATIONS, LIGHT_MUTATIONS

MUTATIONS: tuple[Mutation, ...] = (
    *(row.mutation() for row in POSITION_MUTATIONS),
    *LIGHT_MUTATIONS,
    *DEPTH_MUTATIONS,
    *NOTICE_MUTATIONS,
)
"""Every mutation; its name is unique among those of its kind."""


def mutations_of(kind: Kind) -> tuple[Mutation, ...]:
    """The mutations of `positions`, `lights`, `depths` or `notices`, in a fixed order."""
    return tuple(mutation for mutation in MUTATIONS if mutation.kind == kind)
